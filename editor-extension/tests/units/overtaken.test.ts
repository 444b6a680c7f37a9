import { expect, test } from "vitest";
import { askedAnew } from "../../src/overtaken";

const going = { isCancellationRequested: false };

test("A question whose text changed meanwhile is asked again until it is answered", async () => {
  const document = { version: 1 };
  let asked = 0;
  const answer = await askedAnew(document, going, async () => {
    asked++;
    if (document.version < 4) {
      document.version++;
      return null;
    }

    return ["trunk"];
  });
  expect([answer, asked]).toEqual([["trunk"], 4]);
});

test("No answer for the text as it stands is an answer, and so is one that was called off", async () => {
  let asked = 0;
  expect(await askedAnew({ version: 1 }, going, async () => (asked++, null))).toBeNull();
  const document = { version: 1 };
  expect(await askedAnew(document, { isCancellationRequested: true }, async () => (asked++, document.version++, null))).toBeNull();
  expect(asked).toBe(2);
});
