/** Lays a picture on the sheet. */
import { takeKey } from "./key";
import { readPicture } from "./picture";

/** A picture as it lies there. */
export interface LaidPicture {
  readonly root: SVGSVGElement;
  readonly width: number;
  readonly height: number;
}

/** Puts a picture in the place of the one before, with its styles and its sentences; undefined, and all stays, for text that is no picture. The parts that lead to a line are marked. */
export function layPicture(svg: string, origins: readonly string[], sheet: HTMLElement, styles: CSSStyleSheet): LaidPicture | undefined {
  const read = readPicture(svg);
  if (!read) {
    return undefined;
  }

  // All at once, within one frame: neither an empty sheet nor an unstyled one is ever shown.
  styles.replaceSync(read.styles);
  const { width, height } = read.root.viewBox.baseVal;
  read.root.setAttribute("aria-hidden", "true");
  read.root.removeAttribute("role");
  const leading = new Set(origins);
  for (const part of read.root.querySelectorAll("[data-origin]")) {
    part.classList.toggle("leads", leading.has(part.getAttribute("data-origin")!));
  }

  const key = takeKey(read.root);
  sheet.replaceChildren(read.root);
  if (key) {
    key.list.ariaHidden = "true";
    key.list.style.left = `${key.left}px`;
    key.list.style.top = `${key.top}px`;
    key.list.style.width = `${width - 2 * key.left}px`;
    sheet.append(key.list);
  }

  return { root: read.root, width, height };
}
