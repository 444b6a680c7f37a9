import { expect, test } from "vitest";
import { keyAction } from "../../drawing/keys";
import type { View } from "../../src/messages";

const press = (key: string, keys: { alt?: boolean; ctrl?: boolean; shift?: boolean } = {}, view: View = "plan") =>
  keyAction({ key, altKey: keys.alt ?? false, ctrlKey: keys.ctrl ?? false, metaKey: false, shiftKey: keys.shift ?? false }, view);

test("Arrow keys walk from trunk to trunk", () => {
  expect(["ArrowRight", "ArrowDown", "ArrowLeft", "ArrowUp"].map((key) => press(key))).toEqual([1, 1, -1, -1].map((by) => ({ type: "walk", by })));
  expect(press("Home")).toEqual({ type: "walk", by: "first" });
  expect(press("End")).toEqual({ type: "walk", by: "last" });
});

test("Alt with an arrow key moves a trunk in the plan, with Shift ten times as far", () => {
  expect(press("ArrowUp", { alt: true })).toEqual({ type: "step", right: 0, back: 1 });
  expect(press("ArrowLeft", { alt: true, shift: true })).toMatchObject({ type: "step", right: -10 });
});

test("In the front they lean it and let it grow", () => {
  expect(press("ArrowRight", { alt: true }, "front")).toMatchObject({ type: "step", right: 1 });
  expect(press("ArrowDown", { alt: true }, "front")).toMatchObject({ type: "step", back: -5 });
});

test("In the timeline they move a task by a day or a week, and never up or down", () => {
  expect(press("ArrowRight", { alt: true }, "timeline")).toEqual({ type: "days", days: 1 });
  expect(press("ArrowLeft", { alt: true, shift: true }, "timeline")).toEqual({ type: "days", days: -7 });
  expect(press("ArrowUp", { alt: true }, "timeline")).toBeUndefined();
  expect(press("ArrowDown", {}, "timeline")).toEqual({ type: "walk", by: 1 });
});

test("In the sheet of wire nothing is moved, and the arrow keys walk", () => {
  expect(press("ArrowRight", { alt: true }, "wiring")).toBeUndefined();
  expect(press("ArrowRight", {}, "wiring")).toEqual({ type: "walk", by: 1 });
});

test("Where something is decided nothing is moved by key", () => {
  expect(press("ArrowRight", { alt: true }, "decide")).toBeUndefined();
  expect(press("z", { ctrl: true }, "decide")).toEqual({ type: "undo" });
});

test("Plus, minus and zero size the sheet; Ctrl with an arrow key looks elsewhere", () => {
  expect([press("+"), press("="), press("-"), press("0")]).toEqual([{ type: "zoom", factor: 1.25 }, { type: "zoom", factor: 1.25 }, { type: "zoom", factor: 0.8 }, { type: "whole" }]);
  expect(press("ArrowRight", { ctrl: true })).toMatchObject({ type: "pan", right: -60 });
});

test("Undo and redo are passed on", () => {
  expect([press("z", { ctrl: true }), press("Z", { ctrl: true, shift: true }), press("y", { ctrl: true })]).toEqual([{ type: "undo" }, { type: "redo" }, { type: "redo" }]);
  // With Caps Lock on.
  expect([press("Z", { ctrl: true }), press("z", { ctrl: true, shift: true })]).toEqual([{ type: "undo" }, { type: "redo" }]);
});

test("All other keys are the editor's", () => {
  expect([press("Tab"), press("F1"), press("p", { ctrl: true }), press("0", { ctrl: true }), press("a"), press("Enter", { alt: true })]).toEqual([undefined, undefined, undefined, undefined, undefined, undefined]);
});
