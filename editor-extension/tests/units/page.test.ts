import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { questions, views } from "../../src/messages";
import { contentSecurityPolicy, newNonce, pageText } from "../../src/page";

const parts = { source: "https://editor.test", script: "https://editor.test/drawing.js", style: "https://editor.test/drawing.css", faces: "https://editor.test/faces.css", nonce: "abc" };

test("The page may do nothing but run its script and take its styles and faces", () => {
  expect(contentSecurityPolicy(parts).split("; ")).toEqual([
    "default-src 'none'",
    "script-src 'nonce-abc'",
    "style-src https://editor.test",
    "font-src https://editor.test",
    "base-uri 'none'",
    "form-action 'none'",
  ]);
  expect(contentSecurityPolicy(parts)).not.toMatch(/unsafe|\*|data:|blob:/);
});

test("The page has one script, and it carries the nonce; no style stands in it", () => {
  const text = pageText(parts);
  expect(text.match(/<script[^>]*>/g)).toEqual(['<script nonce="abc" src="https://editor.test/drawing.js">']);
  expect(text).not.toMatch(/<style| style=| on[a-z]+=/);
  expect(text).toContain(`content="${contentSecurityPolicy(parts)}"`);
});

test("Each button and the stage can be reached by keyboard and has a name", () => {
  const text = pageText(parts);
  expect(text.match(/<button/g)).toHaveLength(14);
  expect(text.match(/role="tab"/g)).toHaveLength(11);
  expect(text).toMatch(/id="stage" role="listbox" tabindex="0" aria-label=/);
  expect(text).toMatch(/role="status"/);
});

test("Each view and each question has its own button", () => {
  const text = pageText(parts);
  expect([...text.matchAll(/data-view="(\w+)"/g)].map(([, view]) => view)).toEqual(views);
  expect([...text.matchAll(/data-question="(\w+)"/g)].map(([, question]) => question)).toEqual(questions);
});

test("No two pages have one nonce", () => {
  const nonces = new Set(Array.from({ length: 1000 }, newNonce));
  expect(nonces.size).toBe(1000);
  expect([...nonces][0]).toMatch(/^[\w-]{24}$/);
});

test("The page's colours are those of the plates", () => {
  const plate = readFileSync(new URL("../../../samples/mill-race/plan.svg", import.meta.url), "utf8");
  const page = readFileSync(new URL("../../drawing/drawing.css", import.meta.url), "utf8");
  const colours = (text: string, from: string): Record<string, string> => {
    const block = text.slice(text.indexOf("{", text.indexOf(from)) + 1).split("}")[0]!;
    return Object.fromEntries([...block.matchAll(/(--gs-\w+):\s*([^;}\s]+)/g)].map(([, role, colour]) => [role, colour]));
  };
  expect(Object.keys(colours(plate, ".gs{"))).toHaveLength(7);
  expect(colours(page, "body svg.gs {")).toEqual(colours(plate, ".gs{"));
  expect(colours(page, "body.vscode-dark svg.gs {")).toEqual(colours(plate.slice(plate.indexOf("prefers-color-scheme:dark")), ".gs{"));
  expect(colours(page.slice(page.indexOf("@media print")), "svg.gs {")).toEqual(colours(plate.slice(plate.indexOf("@media print")), ".gs{"));
});
