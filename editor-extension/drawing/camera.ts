/** How the sheet lies under the glass: pure arithmetic, so that it can be tested without a page. */

/** A place in pixels. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

/** A size in pixels. */
export interface Size {
  readonly width: number;
  readonly height: number;
}

/** How large the sheet is shown, and where its upper left corner lies in the stage. */
export interface Camera {
  readonly scale: number;
  readonly x: number;
  readonly y: number;
}

const smallest = 0.1;
const largest = 16;

/** The whole sheet; of one far higher than the stage, its full width from the top, unless nothing of it may be missed. */
export function whole(sheet: Size, stage: Size, isAllShown = false): Camera {
  const byWidth = stage.width / sheet.width;
  const byBoth = Math.max(smallest, Math.min(byWidth, stage.height / sheet.height));
  const scale = isAllShown || byBoth >= 0.8 * byWidth ? byBoth : byWidth;
  const top = (stage.height - sheet.height * scale) / 2;
  return { scale, x: (stage.width - sheet.width * scale) / 2, y: Math.max(0, Math.min(top, 0.12 * stage.height)) };
}

/** Nearer or farther, while what is under a point stays there. */
export function zoomed(camera: Camera, factor: number, at: Point): Camera {
  const scale = Math.min(largest, Math.max(smallest, camera.scale * factor));
  const by = scale / camera.scale;
  return { scale, x: at.x - (at.x - camera.x) * by, y: at.y - (at.y - camera.y) * by };
}

/** Moved, but never so far that less than a hand's breadth of the sheet is left in sight. */
export function moved(camera: Camera, right: number, down: number, sheet: Size, stage: Size): Camera {
  const rest = 80;
  const keep = (value: number, length: number, room: number): number => Math.min(room - rest, Math.max(rest - length * camera.scale, value));
  return { scale: camera.scale, x: keep(camera.x + right, sheet.width, stage.width), y: keep(camera.y + down, sheet.height, stage.height) };
}

/** From the stage to the sheet. */
export const onSheet = (camera: Camera, at: Point): Point => ({ x: (at.x - camera.x) / camera.scale, y: (at.y - camera.y) / camera.scale });

/** From the sheet to the stage. */
export const onStage = (camera: Camera, at: Point): Point => ({ x: at.x * camera.scale + camera.x, y: at.y * camera.scale + camera.y });

/** Whether something kept from an earlier window is a camera. */
export function isCamera(value: unknown): value is Camera {
  const { scale, x, y } = (value ?? {}) as Record<string, unknown>;
  return [scale, x, y].every((number) => typeof number === "number" && Number.isFinite(number)) && (scale as number) >= smallest && (scale as number) <= largest;
}
