/** What the keys do on the stage. */
import type { View } from "../src/messages";

/** What a key asks for. */
export type KeyAction =
  | { readonly type: "walk"; readonly by: 1 | -1 | "first" | "last" }
  | { readonly type: "step"; readonly right: number; readonly back: number }
  | { readonly type: "days"; readonly days: number }
  | { readonly type: "zoom"; readonly factor: number }
  | { readonly type: "pan"; readonly right: number; readonly down: number }
  | { readonly type: "whole" | "enter" | "escape" | "undo" | "redo" };

/** A key as the page hears it. */
export type Key = Pick<KeyboardEvent, "key" | "altKey" | "ctrlKey" | "metaKey" | "shiftKey">;

const arrows: Readonly<Record<string, readonly [right: number, up: number]>> = { ArrowRight: [1, 0], ArrowLeft: [-1, 0], ArrowUp: [0, 1], ArrowDown: [0, -1] };

/**
 * What a key asks for; undefined for one that is left to the page and the editor.
 * In the plan a step is 1 mm, with Shift 10 mm; in the front 1 or 5 degrees of lean, and 5 or 20 mm of height; in the timeline 1 day, with Shift 7. Nothing is moved in the sheet of wire, and nothing by hand in what is to be decided.
 */
export function keyAction({ key, altKey, ctrlKey, metaKey, shiftKey }: Key, view: View): KeyAction | undefined {
  const isCommand = ctrlKey || metaKey;
  const arrow = arrows[key];
  if (arrow) {
    const [right, up] = arrow;
    if (altKey && !isCommand) {
      if (view === "timeline") {
        return right === 0 ? undefined : { type: "days", days: right * (shiftKey ? 7 : 1) };
      }

      if (view === "wiring" || view === "decide") {
        return undefined;
      }

      return view === "front" ? { type: "step", right: right * (shiftKey ? 5 : 1), back: up * (shiftKey ? 20 : 5) } : { type: "step", right: right * (shiftKey ? 10 : 1), back: up * (shiftKey ? 10 : 1) };
    }

    if (isCommand && !altKey) {
      return { type: "pan", right: -60 * right, down: 60 * up };
    }

    return altKey || shiftKey ? undefined : { type: "walk", by: right + -up > 0 ? 1 : -1 };
  }

  if (isCommand && !altKey && (key === "z" || key === "Z" || key === "y")) {
    // By Shift and not by the letter, which Caps Lock turns.
    return { type: key !== "y" && !shiftKey ? "undo" : "redo" };
  }

  if (isCommand || altKey) {
    return undefined;
  }

  switch (key) {
    case "Home":
      return { type: "walk", by: "first" };
    case "End":
      return { type: "walk", by: "last" };
    case "Enter":
      return { type: "enter" };
    case "Escape":
      return { type: "escape" };
    case "+":
    case "=":
      return { type: "zoom", factor: 1.25 };
    case "-":
      return { type: "zoom", factor: 0.8 };
    case "0":
      return { type: "whole" };
    default:
      return undefined;
  }
}
