// Runs the scenarios against one version of the editor: run.mjs --host FOLDER --vsix FILE --results FOLDER [--node NODE] [--browser PATH] [--name NAME] [--only WORDS]...
// Leaves a report in Common Test Report Format, and pictures of what was to be seen.
import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { parseArgs } from "node:util";
import { scenarios } from "./scenarios.mjs";
import { startWorkbench } from "./workbench.mjs";

const text = { type: "string" };
const { values } = parseArgs({ options: { host: text, vsix: text, results: text, node: text, browser: text, name: text, only: { ...text, multiple: true } } });
const { host, vsix, results, node = process.execPath, browser = "/usr/bin/chromium", name = "EndToEnd", only = [""] } = values;
const screens = join(results, "screens", name);
mkdirSync(screens, { recursive: true });

const unknown = only.filter((words) => !scenarios.some((one) => one.name.includes(words)));
if (unknown.length > 0) {
  throw new Error(`No scenario is named ${unknown.join(", ")}.`);
}

const summary = { passed: 0, failed: 0, skipped: 0 };
const tests = [];
const workbench = await startWorkbench({ host, node, vsix, browser, results: screens });
try {
  for (const { name: says, setting, run } of scenarios.filter((one) => only.some((words) => one.name.includes(words)))) {
    const began = Date.now();
    let window;
    let message;
    try {
      window = await workbench.open(setting);
      await run(window, (picture) => window.page.screenshot({ path: join(screens, `${picture}.png`) }));
      if (window.outside.size > 0) {
        throw new Error(`Something outside was asked for: ${[...window.outside].join(", ")}`);
      }
      const broken = window.errors.filter((error) => /Content Security Policy/i.test(error));
      if (broken.length > 0) {
        throw new Error(`The page complained: ${broken.join("\n").slice(0, 1000)}`);
      }
    } catch (error) {
      message = error instanceof Error ? error.message : String(error);
      await window?.page.screenshot({ path: join(screens, `failed-${summary.failed + 1}.png`) }).catch(() => undefined);
    }

    await window?.close();
    summary[message === undefined ? "passed" : "failed"]++;
    const duration = Date.now() - began;
    tests.push({ name: says, status: message === undefined ? "passed" : "failed", duration, ...(message === undefined ? {} : { message }) });
    console.log(`${message === undefined ? "passed" : "FAILED"} (${(duration / 1000).toFixed(1)} s) ${says}${message === undefined ? "" : `\n  ${message}`}`);
  }
} finally {
  await workbench.stop();
}

writeFileSync(join(results, `${name}.json`), JSON.stringify({ results: { tool: { name }, summary: { tests: tests.length, ...summary }, tests } }, null, 1));
process.exit(summary.failed > 0 ? 1 : 0);
