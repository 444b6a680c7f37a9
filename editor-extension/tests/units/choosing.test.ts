import { expect, test } from "vitest";
import { isFixed, nearestTo, stays } from "../../drawing/choosing";

const trunk = (name: string, x?: number, y?: number, fixed = false) => ({ name, origin: `trunk:${name}`, isFixed: fixed, summary: "", ...(x === undefined ? {} : { x }), ...(y === undefined ? {} : { y }) });

test("The nearest within reach is taken, up to its very end, and nothing beyond", () => {
  const all = [trunk("A", 0, 0), trunk("B", 10, 0), trunk("C")];
  expect(nearestTo({ x: 6, y: 0 }, all, 14)?.name).toBe("B");
  expect(nearestTo({ x: -14, y: 0 }, all, 14)?.name).toBe("A");
  expect(nearestTo({ x: -14.1, y: 0 }, all, 14)).toBeUndefined();
  expect(nearestTo({ x: 0, y: 0 }, [trunk("C")], 14)).toBeUndefined();
});

test("A task is never fixed, a trunk where it is said", () => {
  expect(isFixed(trunk("A", 0, 0, true))).toBe(true);
  expect(isFixed(trunk("A", 0, 0))).toBe(false);
  expect(isFixed({ name: "W1", origin: "task:W1", summary: "" })).toBe(false);
  expect(stays(trunk("A"))).toMatch(/^A stays where it is/);
});
