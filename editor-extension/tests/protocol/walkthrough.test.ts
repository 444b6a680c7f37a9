import { readdirSync, readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { Client } from "./client";

const folder = new URL("../../walkthrough/", import.meta.url);

test("What the walkthrough shows is understood by the checker, and fits beside its steps", async () => {
  const client = new Client();
  try {
    await client.begin();
    const blocks = readdirSync(folder).flatMap((file) => [...readFileSync(new URL(file, folder), "utf8").matchAll(/^```\n([^`]*)^```$/gm)].map(([, text], index) => ({ name: `${file} ${index + 1}`, text: text! })));
    expect(blocks.length).toBeGreaterThanOrEqual(5);
    for (const { name, text } of blocks) {
      const uri = client.uriOf(`${name}.grove`);
      await client.open(uri, text);
      const { diagnostics } = await client.findings(uri, 1);
      expect([name, diagnostics.filter(({ code }) => code === "not-understood")]).toEqual([name, []]);
      // The page shows about fifty letters of a line, and cuts off the rest.
      expect(Math.max(...text.split("\n").map((line) => line.length)), name).toBeLessThanOrEqual(50);
    }
  } finally {
    client.dispose();
  }
});
