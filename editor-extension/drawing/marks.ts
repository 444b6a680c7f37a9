/** What is laid over a picture to show where the caret and the keys are. Nothing of it moves the picture. */
import type { DrawnTask, DrawnTrunk, View } from "../src/messages";

const svgNamespace = "http://www.w3.org/2000/svg";

/** An element of SVG. */
export const svgElement = <Name extends keyof SVGElementTagNameMap>(name: Name): SVGElementTagNameMap[Name] => document.createElementNS(svgNamespace, name);

/** A circle of a class. */
export function circle(name: string, x: number, y: number, radius: number): SVGCircleElement {
  const made = svgElement("circle");
  made.classList.add(name);
  made.cx.baseVal.value = x;
  made.cy.baseVal.value = y;
  made.r.baseVal.value = radius;
  return made;
}

/** The parts of a picture that stand for a fact. */
export const partsOf = (root: SVGSVGElement, origin: string): SVGGraphicsElement[] =>
  [...root.querySelectorAll<SVGGraphicsElement>("[data-origin]")].filter((part) => part.getAttribute("data-origin") === origin && !part.closest(".ghost"));

/** Shows which facts the caret stands on, and which trunk or task the keys have walked to. */
export function mark(root: SVGSVGElement, view: View, choices: readonly (DrawnTrunk | DrawnTask)[], lit: readonly string[], current: string | undefined): void {
  for (const part of root.querySelectorAll("[data-origin]")) {
    const origin = part.getAttribute("data-origin")!;
    part.classList.toggle("lit", lit.includes(origin));
    part.classList.toggle("current", origin === current);
  }

  root.querySelectorAll(".ring-lit, .ring-current").forEach((ring) => ring.remove());
  for (const choice of choices) {
    const name = choice.origin === current ? "ring-current" : lit.includes(choice.origin) ? "ring-lit" : undefined;
    if (name && choice.x !== undefined && choice.y !== undefined) {
      root.append(circle(name, choice.x, choice.y, view === "plan" ? radiusRound(root, choice.origin) : 11));
    }
  }
}

// Outside the trunk's own section.
function radiusRound(root: SVGSVGElement, origin: string): number {
  const box = partsOf(root, origin)
    .find((part) => part instanceof SVGGElement)
    ?.getBBox();
  return box ? Math.min(60, Math.max(11, Math.min(box.width, box.height) / 2 + 4)) : 11;
}
