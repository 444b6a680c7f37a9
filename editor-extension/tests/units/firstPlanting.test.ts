import { expect, test } from "vitest";
import { fileStem, firstPlanting, habits } from "../../src/firstPlanting";

test("A file is named after its planting", () => {
  expect(fileStem("Salt Bank")).toBe("salt-bank");
  expect(fileStem("  L'Été — à deux ")).toBe("l-ete-a-deux");
  expect(fileStem("../../etc/passwd")).toBe("etc-passwd");
  expect(fileStem("🌲")).toBe("first-planting");
  expect(fileStem("x".repeat(500))).toHaveLength(60);
});

test("A name stays one text, whatever it holds", () => {
  const lines = firstPlanting('a "b" \\ c\ntrunk Z', "group").split("\n");
  expect(lines[1]).toBe('planting  "a \\"b\\" \\\\ c trunk Z"');
});

test("Each kind of planting is written as the language has it", () => {
  for (const { label } of habits) {
    expect(firstPlanting("x", label)).toContain(`habit     ${label}\n`);
  }
});
