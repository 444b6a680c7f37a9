import { existsSync, readFileSync } from "node:fs";
import { expect, test } from "vitest";

const at = (file: string) => new URL(`../../${file}`, import.meta.url);
const read = (file: string) => JSON.parse(readFileSync(at(file), "utf8"));
const manifest = read("package.json");
const { contributes } = manifest;

test("The problem matcher reads the lines that check writes", () => {
  const { pattern } = contributes.problemMatchers[0];
  const line = "samples/class-picture/class-picture.grove:11:1: warning: C, A and B stand in line: A stands only 7.2 mm off [as seen]. [three-in-line]";
  const found = new RegExp(pattern.regexp).exec(line)!;
  expect(found[pattern.file]).toBe("samples/class-picture/class-picture.grove");
  expect([found[pattern.line], found[pattern.column], found[pattern.severity], found[pattern.code]]).toEqual(["11", "1", "warning", "three-in-line"]);
  expect(found[pattern.message]).toMatch(/^C, A and B stand in line.*seen\]\.$/);
  expect(new RegExp(pattern.regexp).exec("C:\\trees\\a b.grove:1:2: error: x [odd-unit]")![pattern.file]).toBe("C:\\trees\\a b.grove");
  expect(new RegExp(pattern.regexp).test("1 warning")).toBe(false);
});

test("No setting could name a program", () => {
  expect(Object.keys(contributes.configuration.properties)).toEqual(["grovespec.units", "grovespec.on", "grovespec.hints", "grovespec.lenses"]);
  expect(manifest.capabilities.untrustedWorkspaces.supported).toBe("limited");
});

test("Every file that is named is there", () => {
  const names = JSON.stringify(manifest).match(/"\.\/[^"]+"/g)!.map((name) => JSON.parse(name) as string);
  expect(names.length).toBeGreaterThan(10);
  expect(names.filter((name) => !name.startsWith("./dist/") && !existsSync(at(name)))).toEqual([]);
});

test("Every command that a menu, a key or the walkthrough names is declared", () => {
  const declared = contributes.commands.map(({ command }: { command: string }) => command);
  const named = new Set(JSON.stringify(contributes).match(/grovespec\.(?:show\w+|first\w+|restart\w+)/g));
  expect([...named].sort()).toEqual([...declared].sort());
});

test("The day to show is a day or nothing", () => {
  const { pattern } = contributes.configuration.properties["grovespec.on"];
  expect(["", "2027-04-22"].map((day) => new RegExp(pattern).test(day))).toEqual([true, true]);
  expect(["today", "2027-4-2", "2027-04-22 "].map((day) => new RegExp(pattern).test(day))).toEqual([false, false, false]);
});

test("A name with a dash or of any script is one word", () => {
  const { wordPattern } = read("language-configuration.json");
  const words = "trunk old-oak_2' at -12.5 mm role élan 树🌲".match(new RegExp(wordPattern, "g"));
  expect(words).toEqual(["trunk", "old-oak_2'", "at", "-12.5", "mm", "role", "élan", "树🌲"]);
});

test("A line that opens a block is followed by a deeper one, a closing brace is not", () => {
  const { indentationRules } = read("language-configuration.json");
  const deeper = new RegExp(indentationRules.increaseIndentPattern);
  expect(['measured 2026-10-30 {', 'role "x{" lee { # note', "role a { form stout"].map((line) => deeper.test(line))).toEqual([true, true, true]);
  expect(["role a { form stout }", '# role a {', 'concept "{"', "trunk A at 1, 2"].map((line) => deeper.test(line))).toEqual([false, false, false, false]);
  expect(new RegExp(indentationRules.decreaseIndentPattern).test("  }")).toBe(true);
});
