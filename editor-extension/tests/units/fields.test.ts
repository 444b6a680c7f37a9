import { expect, test } from "vitest";
import { written } from "../../drawing/fields";

test("Only what was written since is asked with, so that the other fields may follow it", () => {
  const diameter = { name: "diameter", value: "40 mm", sent: "24 mm" };
  const height = { name: "height", value: "310 mm", sent: "310 mm" };
  expect(written([diameter, height])).toEqual({ diameter: "40 mm" });
  expect(written([{ ...diameter, sent: "40 mm" }, { ...height, value: "" }])).toEqual({ height: "" });
  expect(written([{ ...diameter, sent: "40 mm" }, height])).toBeUndefined();
  expect(written([])).toBeUndefined();
});
