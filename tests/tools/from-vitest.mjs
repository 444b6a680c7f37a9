// Turns vitest's report into the form that sum.mjs reads: from-vitest.mjs REPORT OUTPUT
import { readFileSync, writeFileSync } from "node:fs";

const [report, output] = process.argv.slice(2);
const { testResults } = JSON.parse(readFileSync(report, "utf8"));
const tests = testResults.flatMap(({ name, message, assertionResults }) =>
  assertionResults.length > 0
    ? assertionResults.map(({ fullName, status, failureMessages }) => ({ name: fullName, status, message: failureMessages.join("\n") }))
    : // A file that could not be read has no test that failed; it counts as one.
      [{ name, status: "failed", message }],
);
const count = (status) => tests.filter((test) => test.status === status).length;
const summary = { passed: count("passed"), failed: count("failed"), skipped: tests.length - count("passed") - count("failed") };
writeFileSync(output, JSON.stringify({ results: { summary, tests } }));
