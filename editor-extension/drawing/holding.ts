/** A trunk, or in the timeline a task, that is moved by hand: what follows the pointer, and what to keep clear of. Where it may stand is not known here. */
import type { DrawnTask, DrawnTrunk, GuidesMessage, PictureMessage, Plate } from "../src/messages";
import type { Point } from "./camera";
import { circle, partsOf, svgElement } from "./marks";
import { readPiece } from "./picture";

/** From the moment it is taken until a picture shows it where it was let go. */
export class Holding {
  /** Where it would be if it were let go, in the picture's own coordinates. */
  at: Point;
  /** Whether it was moved at all; otherwise it was only clicked. */
  isMoved = false;
  /** Whether it was let go and its new picture is awaited. */
  isDropped = false;
  readonly version: number;
  readonly view: Plate;
  private readonly home: Point;
  private readonly offset: Point;
  private ghost: SVGGElement | undefined;

  /**
   * @param root The picture.
   * @param picture What it was made of.
   * @param choice The trunk or the task, which has a place in it.
   * @param pointer Which pointer holds it.
   * @param start Where it was taken, in the picture's own coordinates.
   */
  constructor(
    private readonly root: SVGSVGElement,
    picture: PictureMessage,
    readonly choice: DrawnTrunk | DrawnTask,
    readonly pointer: number,
    private readonly start: Point,
  ) {
    this.version = picture.version;
    this.view = picture.view;
    this.home = { x: choice.x!, y: choice.y! };
    this.offset = { x: this.home.x - start.x, y: this.home.y - start.y };
    this.at = this.home;
  }

  /** How far a pointer is from where it was taken. */
  distance(to: Point): number {
    return Math.hypot(to.x - this.start.x, to.y - this.start.y);
  }

  /** Follows the pointer. */
  follow(to: Point): void {
    this.isMoved = true;
    this.ghost ??= this.makeGhost();
    // The days of a task move along its row.
    this.at = { x: to.x + this.offset.x, y: this.view === "timeline" ? this.home.y : to.y + this.offset.y };
    if (this.view !== "front") {
      this.ghost.setAttribute("transform", `translate(${this.at.x - this.home.x} ${this.at.y - this.home.y})`);
      return;
    }

    const thread = this.ghost.querySelector("line");
    const top = this.ghost.querySelector("circle");
    if (thread && top) {
      thread.x2.baseVal.value = top.cx.baseVal.value = this.at.x;
      thread.y2.baseVal.value = top.cy.baseVal.value = this.at.y;
    }
  }

  /** Shows what to keep clear of, if that is still asked for. */
  guide({ trunk, version, svg }: GuidesMessage): void {
    const piece = this.isMoved && !this.isDropped && trunk === this.choice.name && version === this.version ? readPiece(svg) : undefined;
    if (piece) {
      this.root.querySelector(".guides")?.remove();
      piece.classList.add("guides");
      this.keepOnTheGround(piece);
      this.root.insertBefore(piece, this.ghost ?? null);
    }
  }

  /** Takes all of it away. */
  end(): void {
    this.ghost?.remove();
    this.root.querySelectorAll(".guides").forEach((guides) => guides.remove());
  }

  // A strip that runs past the container says nothing: no trunk can stand there.
  private keepOnTheGround(piece: SVGElement): void {
    const rim = this.root.querySelector(".gs-rim, .gs-ground")?.cloneNode(true);
    if (rim instanceof SVGElement) {
      rim.removeAttribute("data-origin");
      const clip = svgElement("clipPath");
      clip.id = "ground-of-guides";
      clip.append(rim);
      piece.append(clip);
      piece.setAttribute("clip-path", "url(#ground-of-guides)");
    }
  }

  // A faint copy of the trunk, or of the marks of the task; in the front its top on a thread.
  private makeGhost(): SVGGElement {
    const ghost = svgElement("g");
    ghost.classList.add("ghost");
    if (this.view !== "front") {
      for (const part of partsOf(this.root, this.choice.origin)) {
        const copy = part.cloneNode(true) as Element;
        [copy, ...copy.querySelectorAll("[data-origin]")].forEach((inner) => inner.removeAttribute("data-origin"));
        if (this.view === "timeline") {
          copy.querySelectorAll("text, title").forEach((words) => words.remove());
        }

        ghost.append(copy);
      }
    } else {
      const thread = svgElement("line");
      thread.x1.baseVal.value = thread.x2.baseVal.value = this.home.x;
      thread.y1.baseVal.value = thread.y2.baseVal.value = this.home.y;
      ghost.append(thread, circle("top", this.home.x, this.home.y, 8));
    }

    this.root.append(ghost);
    return ghost;
  }
}
