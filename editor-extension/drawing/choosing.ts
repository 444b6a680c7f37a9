/** What the keys walk to and the pointer takes hold of: trunks, in the timeline tasks. */
import type { DrawnTask, DrawnTrunk } from "../src/messages";
import type { Point } from "./camera";

/** A trunk or a task. */
export type Held = DrawnTrunk | DrawnTask;

/** Whether it is a trunk that stays where it is. */
export const isFixed = (choice: Held): choice is DrawnTrunk => "isFixed" in choice && choice.isFixed;

/** Why a trunk stays where it is. */
export const stays = ({ name }: Held): string => `${name} stays where it is: it is fixed, or shares its base, or tape readings place it.`;

/** The fact that a part of the picture stands for, where it leads to a line. */
export const originAt = (target: EventTarget | null): string | undefined =>
  (target instanceof Element ? target.closest("[data-origin].leads") : null)?.getAttribute("data-origin") ?? undefined;

/** The one whose place is nearest to a point, within reach: in the front view a crown hides what is behind it, and the top is taken. */
export function nearestTo<Choice extends Held>(at: Point, all: readonly Choice[], reach: number): Choice | undefined {
  return all
    .filter(({ x, y }) => x !== undefined && y !== undefined)
    .map((choice) => ({ choice, far: Math.hypot(choice.x! - at.x, choice.y! - at.y) }))
    .filter(({ far }) => far <= reach)
    .sort((one, other) => one.far - other.far)[0]?.choice;
}

/** Lists them for those who do not see the picture, and says in which of them the keys are. */
export function listHeld(all: readonly Held[], current: string | undefined, list: HTMLElement, stage: HTMLElement): void {
  list.replaceChildren(
    ...all.map((choice, index) => {
      const { name, origin, summary } = choice;
      const option = document.createElement("div");
      option.id = `trunk-${index}`;
      option.role = "option";
      option.ariaSelected = String(origin === current);
      option.textContent = summary === "" ? name : isFixed(choice) ? `${summary} Fixed.` : summary;
      return option;
    }),
  );
  const index = all.findIndex(({ origin }) => origin === current);
  if (index < 0) {
    stage.removeAttribute("aria-activedescendant");
  } else {
    stage.setAttribute("aria-activedescendant", `trunk-${index}`);
  }
}
