// Adds up what every runner reported in a folder, names each test that failed or was skipped, and says the sum in the last line.
// Each runner leaves NAME.status (its exit status) and NAME.json (its report in Common Test Report Format);
// a step without tests leaves only the report. Ends with status 1 when anything failed.
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";

const folder = process.argv[2];
const sum = { passed: 0, failed: 0, skipped: 0 };
const names = readdirSync(folder).sort();

for (const name of names.filter((name) => name.endsWith(".json"))) {
  let summary, tests;
  try {
    ({ summary, tests = [] } = JSON.parse(readFileSync(join(folder, name), "utf8")).results);
  } catch {
    console.log(`${name} cannot be read: counted as failed`);
    sum.failed++;
    continue;
  }

  // Whoever reads the end of a long log finds here which test it was, and why.
  const runner = name.slice(0, -".json".length);
  for (const test of tests.filter((test) => test.status !== "passed")) {
    console.log([`${test.status}: ${runner}: ${test.name}`, test.message, test.status === "failed" && test.trace].filter(Boolean).join("\n").split("\n").slice(0, 30).join("\n    "));
  }

  if (tests.length === 0 && summary.failed > 0) {
    console.log(`failed: ${runner}`);
  }

  sum.passed += summary.passed;
  sum.failed += summary.failed + (summary.other ?? 0);
  sum.skipped += summary.skipped + (summary.pending ?? 0);
}

for (const name of names.filter((name) => name.endsWith(".status"))) {
  const { runner, status } = JSON.parse(readFileSync(join(folder, name), "utf8"));
  const report = join(folder, `${runner}.json`);
  let failed = 0;
  if (existsSync(report)) {
    try {
      failed = JSON.parse(readFileSync(report, "utf8")).results.summary.failed;
    } catch {
      failed = 1; // counted above
    }
  }

  if (status !== 0 && failed === 0) {
    console.log(`${runner} ended with status ${status} and reported no failed test: counted as failed`);
    sum.failed++;
  } else if (!existsSync(report)) {
    console.log(`${runner} wrote no report: counted as failed`);
    sum.failed++;
  }
}

if (sum.passed + sum.failed === 0) {
  sum.failed = 1;
}

console.log(`${sum.passed} passed, ${sum.failed} failed, ${sum.skipped} skipped`);
process.exit(sum.failed > 0 ? 1 : 0);
