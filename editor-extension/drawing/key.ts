/** The sentences below a plate. In the picture they shrink with it; here they become text that can be read in a narrow panel too. */

/** The sentences, and where they begin on the sheet. */
export interface PlateKey {
  readonly list: HTMLElement;
  readonly left: number;
  readonly top: number;
}

/** Takes the numbered sentences out of a picture and gives them back as a list; undefined for a picture without any. */
export function takeKey(root: SVGSVGElement): PlateKey | undefined {
  const list = document.createElement("ol");
  list.id = "key";
  let left = 0;
  let top = 0;
  for (const number of root.querySelectorAll<SVGTextElement>(":scope > text.gs-mark-number")) {
    const lines: Element[] = [];
    for (let next = number.nextElementSibling; next?.matches("text.gs-key"); next = next.nextElementSibling) {
      lines.push(next);
    }

    const mark = number.previousElementSibling;
    if (lines.length === 0 || !(mark instanceof SVGCircleElement)) {
      continue;
    }

    if (list.childElementCount === 0) {
      left = mark.cx.baseVal.value - mark.r.baseVal.value;
      top = mark.cy.baseVal.value - mark.r.baseVal.value;
    }

    const item = document.createElement("li");
    const count = document.createElement("span");
    count.textContent = number.textContent;
    const sentence = document.createElement("p");
    sentence.textContent = lines.map(({ textContent }) => textContent).join(" ");
    item.append(count, sentence);
    list.append(item);
    [mark, number, ...lines].forEach((part) => part.remove());
  }

  return list.childElementCount === 0 ? undefined : { list, left, top };
}
