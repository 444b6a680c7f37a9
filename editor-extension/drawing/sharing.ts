/** How a picture and the choices beside it share the room that there is. */
import type { Size } from "./camera";

/** Where the choices stand, and how much room they take: pixels across beside the picture, pixels down below it. */
export interface Sharing {
  readonly isBeside: boolean;
  readonly choices: number;
}

const leastAcross = 220;
const mostAcross = 390;
const shareAcross = 0.42;
const leastDown = 0.38;

/** Sets the choices where the picture is seen larger; about the same either way, beside it, since they are read with less scrolling there. */
export function share(table: Size, sheet: Size): Sharing {
  const across = Math.max(leastAcross, Math.min(mostAcross, shareAcross * table.width));
  const down = Math.max(leastDown * table.height, table.height - (sheet.height * table.width) / sheet.width);
  const beside = scaleIn({ width: table.width - across, height: table.height }, sheet);
  const below = scaleIn({ width: table.width, height: table.height - down }, sheet);
  return beside >= 0.8 * below ? { isBeside: true, choices: Math.round(across) } : { isBeside: false, choices: Math.round(down) };
}

/** Shares the room on the page. */
export class Table {
  private question = "";
  private sheet: Size = { width: 1000, height: 900 };

  constructor(
    private readonly table: HTMLElement,
    private readonly choices: HTMLElement,
  ) {
    new ResizeObserver(() => this.lay()).observe(table);
  }

  /** Takes a picture of a question. The first one settles how the room is shared: what is read must not jump from choice to choice. */
  show(question: string, sheet: Size): void {
    if (question !== this.question) {
      [this.question, this.sheet] = [question, sheet];
      this.lay();
    }
  }

  private lay(): void {
    const { isBeside, choices } = share(this.table.getBoundingClientRect(), this.sheet);
    this.table.classList.toggle("beside", isBeside);
    this.choices.style.width = isBeside ? `${choices}px` : "auto";
    this.choices.style.height = isBeside ? "auto" : `${choices}px`;
  }
}

const scaleIn = (room: Size, sheet: Size): number => Math.max(0, Math.min(room.width / sheet.width, room.height / sheet.height));
