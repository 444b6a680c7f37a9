import { expect, test } from "vitest";
import { isCamera, moved, onSheet, onStage, whole, zoomed } from "../../drawing/camera";

const sheet = { width: 1000, height: 1200 };
const stage = { width: 500, height: 700 };

test("A whole sheet lies in the stage with nothing cut off", () => {
  const camera = whole(sheet, stage);
  expect(camera.scale).toBeCloseTo(0.5);
  expect(camera.x).toBeCloseTo(0);
  expect(camera.y).toBeGreaterThanOrEqual(0);
});

test("A sheet with a long key is shown in its full width from the top", () => {
  expect(whole({ width: 1000, height: 5000 }, stage)).toEqual({ scale: 0.5, x: 0, y: 0 });
  const all = whole({ width: 1000, height: 2000 }, stage, true);
  expect(all.scale * 2000).toBeLessThanOrEqual(stage.height);
  expect(all.y).toBe(0);
});

test("What is under the pointer stays there while the sheet grows", () => {
  const camera = { scale: 0.5, x: 20, y: -30 };
  const at = { x: 133, y: 71 };
  const nearer = zoomed(camera, 3, at);
  expect(onSheet(nearer, at).x).toBeCloseTo(onSheet(camera, at).x);
  expect(onSheet(nearer, at).y).toBeCloseTo(onSheet(camera, at).y);
});

test("There is a nearest and a farthest", () => {
  expect(zoomed({ scale: 1, x: 0, y: 0 }, 1e9, { x: 0, y: 0 }).scale).toBe(16);
  expect(zoomed({ scale: 1, x: 0, y: 0 }, 1e-9, { x: 0, y: 0 }).scale).toBe(0.1);
});

test("The sheet cannot be lost from sight", () => {
  const camera = moved({ scale: 0.5, x: 0, y: 0 }, 1e6, -1e6, sheet, stage);
  expect(camera.x).toBe(420);
  expect(camera.y).toBe(80 - 600);
});

test("Stage and sheet lead to each other", () => {
  const camera = { scale: 0.37, x: 12, y: -9 };
  const back = onStage(camera, onSheet(camera, { x: 50, y: 60 }));
  expect(back.x).toBeCloseTo(50);
  expect(back.y).toBeCloseTo(60);
});

test("What an earlier window kept is taken only when it is a camera", () => {
  expect([null, 5, {}, { scale: "1", x: 0, y: 0 }, { scale: Number.NaN, x: 0, y: 0 }, { scale: 99, x: 0, y: 0 }].map(isCamera)).toEqual([false, false, false, false, false, false]);
  expect(isCamera({ scale: 1, x: 0, y: 0 })).toBe(true);
});
