// Turns vitest's report into the form that sum.mjs reads: from-vitest.mjs REPORT OUTPUT
import { readFileSync, writeFileSync } from "node:fs";

const [report, output] = process.argv.slice(2);
const { numPassedTests, numFailedTests, numPendingTests, numTodoTests, numFailedTestSuites } = JSON.parse(readFileSync(report, "utf8"));
// A file that could not be read has no test that failed; it counts as one.
const failed = numFailedTests > 0 ? numFailedTests : Math.min(1, numFailedTestSuites);
const summary = { passed: numPassedTests, failed, skipped: numPendingTests + numTodoTests };
writeFileSync(output, JSON.stringify({ results: { summary } }));
