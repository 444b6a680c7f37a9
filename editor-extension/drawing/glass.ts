/** The glass over the sheet: keeps how each plate was last looked at, through new pictures and new windows. */
import { isCamera, moved, onSheet, onStage, whole, zoomed, type Camera, type Point, type Size } from "./camera";

/** A pointer's place on the screen. */
type At = Pick<PointerEvent, "clientX" | "clientY">;

/** Moves and sizes the sheet. */
export class Glass {
  private camera: Camera = { scale: 1, x: 0, y: 0 };
  private size: Size = { width: 1000, height: 1000 };
  private plate = "";
  private isAllShown = false;
  private readonly cameras = new Map<string, Camera>();
  private readonly wholes = new Map<string, Camera>();
  private grip: { pointer: number; x: number; y: number; isMoved: boolean } | undefined;

  /**
   * @param stage What the sheet is seen in.
   * @param sheet What is moved.
   * @param kept What {@link keep} gave in an earlier window.
   * @param changed Called when there is something new to keep.
   */
  constructor(
    private readonly stage: HTMLElement,
    private readonly sheet: HTMLElement,
    kept: Record<string, unknown>,
    private readonly changed: () => void,
  ) {
    for (const [plate, camera] of Object.entries(kept)) {
      if (isCamera(camera)) {
        this.cameras.set(plate, camera);
      }
    }

    new ResizeObserver(() => {
      this.wholes.clear();
      this.place();
    }).observe(stage);
  }

  /** How large the sheet is shown. */
  get scale(): number {
    return this.camera.scale;
  }

  /** Shows a plate of a size as it was last looked at, or whole: what lies below its upper part too, where it must be seen at one glance. */
  show(plate: string, size: Size, isAllShown = false): void {
    this.plate = plate;
    this.isAllShown = isAllShown;
    this.size = size;
    this.sheet.style.width = `${size.width}px`;
    this.sheet.style.height = `${size.height}px`;
    this.place();
  }

  /** What to keep: how each plate that is not seen whole is looked at. */
  keep(): Record<string, Camera> {
    return Object.fromEntries(this.cameras);
  }

  /** The whole plate again. */
  whole(): void {
    this.cameras.delete(this.plate);
    this.wholes.delete(this.plate);
    this.place();
    this.changed();
  }

  /** Nearer or farther round a pointer, or round the middle. */
  zoom(factor: number, at?: At): void {
    const { width, height } = this.stage.getBoundingClientRect();
    this.set(zoomed(this.camera, factor, at ? this.onStage(at) : { x: width / 2, y: height / 2 }));
  }

  /** Follows the wheel: nearer and farther round the pointer, with or without the key that a pinch brings along. */
  turn(event: WheelEvent): void {
    event.preventDefault();
    const lines = event.deltaMode === WheelEvent.DOM_DELTA_LINE ? 24 : 1;
    this.zoom(Math.exp((-event.deltaY * lines) / (event.ctrlKey ? 120 : 480)), event);
  }

  /** Moves the sheet. */
  move(right: number, down: number): void {
    // The sentences below a plate may run past its end.
    const size = { width: this.size.width, height: Math.max(this.size.height, this.sheet.scrollHeight) };
    this.set(moved(this.camera, right, down, size, this.stage.getBoundingClientRect()));
  }

  /** Moves the sheet only as far as a place on it needs to be seen. */
  bringIntoSight(place: Point): void {
    const { width, height } = this.stage.getBoundingClientRect();
    const { x, y } = onStage(this.camera, place);
    const edge = 40;
    const right = x < edge ? edge - x : x > width - edge ? width - edge - x : 0;
    const down = y < edge ? edge - y : y > height - edge ? height - edge - y : 0;
    if (right !== 0 || down !== 0) {
      this.move(right, down);
    }
  }

  /** Where a pointer is on the sheet. */
  onSheet(at: At): Point {
    return onSheet(this.camera, this.onStage(at));
  }

  /** Takes hold of the ground. */
  beginPan({ pointerId, clientX, clientY }: PointerEvent): void {
    this.grip = { pointer: pointerId, x: clientX, y: clientY, isMoved: false };
  }

  /** Follows the pointer that holds the ground. */
  pan({ pointerId, clientX, clientY }: PointerEvent): void {
    const grip = this.grip;
    if (grip?.pointer !== pointerId || (!grip.isMoved && Math.hypot(clientX - grip.x, clientY - grip.y) < 4)) {
      return;
    }

    this.stage.classList.add("panning");
    this.move(clientX - grip.x, clientY - grip.y);
    this.grip = { pointer: pointerId, x: clientX, y: clientY, isMoved: true };
  }

  /** Lets go of the ground; whether it was moved. */
  endPan({ pointerId }: PointerEvent): boolean {
    const isMoved = this.grip?.pointer === pointerId && this.grip.isMoved;
    this.stage.classList.remove("panning");
    this.grip = undefined;
    return isMoved;
  }

  private onStage({ clientX, clientY }: At): Point {
    const { left, top } = this.stage.getBoundingClientRect();
    return { x: clientX - left, y: clientY - top };
  }

  private set(camera: Camera): void {
    this.cameras.set(this.plate, camera);
    this.place();
    this.changed();
  }

  private place(): void {
    this.camera = this.cameras.get(this.plate) ?? this.wholeOf(this.plate);
    const { scale, x, y } = this.camera;
    this.sheet.style.transform = `translate(${x}px, ${y}px) scale(${scale})`;
    this.sheet.style.setProperty("--scale", String(scale));
  }

  // A sentence more below a plate makes it longer; what is drawn above it is not to jump for that.
  private wholeOf(plate: string): Camera {
    const camera = this.wholes.get(plate) ?? whole(this.size, this.stage.getBoundingClientRect(), this.isAllShown);
    this.wholes.set(plate, camera);
    return camera;
  }
}
