/**
 * One word checks everything: installs what is missing, then runs each stage and ends with `N passed, N failed`. A stage
 * counts once by itself, and each of its tests besides; a stage that could not run has failed.
 */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { build } from "#server/commands/build.mjs";
import { chromium } from "#server/commands/chromium.mjs";
import { install } from "#server/commands/install.mjs";
import { root } from "#server/commands/root.mjs";
import { CommandFailed, run } from "#server/commands/run.mjs";
import { step } from "#server/commands/step.mjs";

const node = process.execPath;
const vitestReport = "tests/.cache/vitest.json";
const browserReport = "tests/.cache/browser.json";

/** @param {string} file */
const report = (file) => JSON.parse(readFileSync(join(root, file), "utf8"));

/** @typedef {{ passed: number, failed: number }} Count */
/** @type {Count} */
const total = { passed: 0, failed: 0 };

/**
 * Runs tests and counts them. A run that fails still has a report; one without a test has proved nothing.
 * @param {() => Promise<unknown>} tests @param {() => Count} count
 */
async function counted(tests, count) {
  let failure;
  try {
    await tests();
  } catch (error) {
    failure = error;
  }
  const { passed, failed } = count();
  total.passed += passed;
  total.failed += failed;
  if (failure !== undefined) throw failure;
  if (passed === 0) throw new CommandFailed("No test ran.");
  return `${passed} passed, ${failed} failed`;
}

const vitest = () => {
  const args = ["run", "--reporter=default", "--reporter=json", `--outputFile.json=${vitestReport}`];
  return run(node, ["node_modules/vitest/vitest.mjs", ...args]);
};

const countVitest = () => {
  const { numPassedTests, numFailedTests } = report(vitestReport);
  return { passed: numPassedTests, failed: numFailedTests };
};

const browser = async () => {
  const env = { CHROMIUM_PATH: await chromium(), PLAYWRIGHT_JSON_OUTPUT_NAME: browserReport };
  return run(node, ["node_modules/@playwright/test/cli.js", "test", "--reporter=line,json"], { env });
};

/** A test that was left out, or passed at a second try, did not pass. */
const countBrowser = () => {
  const { expected, unexpected, flaky, skipped } = report(browserReport).stats;
  return { passed: expected, failed: unexpected + flaky + skipped };
};

const types = async () => {
  await run(node, ["node_modules/next/dist/bin/next", "typegen"]);
  await run(node, ["node_modules/typescript/bin/tsc", "--noEmit", "-p", "."]);
};

/** @type {[what: string, work: () => Promise<unknown>][]} */
const stages = [
  ["Install what is missing", install],
  ["Find a Chromium", chromium],
  [
    "Format and lint",
    () => run(node, ["node_modules/@biomejs/biome/bin/biome", "ci", "--error-on-warnings"]),
  ],
  ["Types", types],
  ["Unit and server tests", () => counted(vitest, countVitest)],
  ["Build", build],
  ["Browser tests", () => counted(browser, countBrowser)],
];

for (const [what, work] of stages) {
  try {
    await step(what, work);
    total.passed += 1;
  } catch (error) {
    total.failed += 1;
    if (error instanceof CommandFailed && error.output !== "") console.error(error.output.trimEnd());
    console.error(error instanceof Error ? error.message : error);
  }
}

console.log(`${total.passed} passed, ${total.failed} failed`);
process.exitCode = total.failed === 0 ? 0 : 1;
