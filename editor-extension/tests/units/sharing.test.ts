import { expect, test } from "vitest";
import { share } from "../../drawing/sharing";

const plan = { width: 1000, height: 930 };

/** How large a picture is seen where the room is shared so. */
function seen(table: { width: number; height: number }, sheet = plan): number {
  const { isBeside, choices } = share(table, sheet);
  const stage = isBeside ? { width: table.width - choices, height: table.height } : { width: table.width, height: table.height - choices };
  return Math.min(stage.width / sheet.width, stage.height / sheet.height);
}

test("In a low panel the choices stand beside the picture, however narrow it is, so that the picture has all its height", () => {
  expect(share({ width: 525, height: 240 }, plan)).toEqual({ isBeside: true, choices: 221 });
  expect(seen({ width: 525, height: 240 })).toBeCloseTo(240 / 930);
});

test("In a high and narrow panel they stand below, and the picture takes the width as far as they leave the height", () => {
  expect(share({ width: 525, height: 690 }, plan)).toEqual({ isBeside: false, choices: 262 });
  expect(seen({ width: 525, height: 690 })).toBeCloseTo((690 - 262) / 930);
  expect(share({ width: 300, height: 900 }, plan)).toEqual({ isBeside: false, choices: 621 });
  expect(seen({ width: 300, height: 900 })).toBeCloseTo(0.3);
});

test("In a wide panel they stand beside, and take no more than can be read across", () => {
  expect(share({ width: 700, height: 690 }, plan)).toEqual({ isBeside: true, choices: 294 });
  expect(share({ width: 1600, height: 900 }, plan)).toEqual({ isBeside: true, choices: 390 });
});

test("In every panel the picture is at least four fifths as large as it could be either way, and both have room", () => {
  for (let width = 240; width <= 1600; width += 20) {
    for (let height = 120; height <= 1200; height += 20) {
      for (const sheet of [plan, { width: 1000, height: 560 }, { width: 1000, height: 1500 }]) {
        const across = Math.max(220, Math.min(390, 0.42 * width));
        const beside = Math.min((width - across) / sheet.width, height / sheet.height);
        const below = Math.min(width / sheet.width, (0.62 * height) / sheet.height);
        expect(seen({ width, height }, sheet)).toBeGreaterThan(0.79 * Math.max(beside, below));
        const { isBeside, choices } = share({ width, height }, sheet);
        expect(choices).toBeGreaterThan(isBeside ? 219 : 0.37 * height);
      }
    }
  }
});
