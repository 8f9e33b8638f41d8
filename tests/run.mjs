/**
 * One word checks everything: installs what is missing, then runs each stage and ends with `N passed, N failed`. A stage
 * counts once by itself, and each of its tests besides; a stage that could not run has failed.
 */
import { existsSync, readFileSync, rmSync } from "node:fs";
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

/** @typedef {{ passed: number, failed: number }} Count */
/** @type {Count} */
const total = { passed: 0, failed: 0 };

/**
 * Runs tests and counts them. A run that fails still writes its report; one without a test has proved nothing.
 * @param {string} file the report @param {() => Promise<unknown>} tests @param {(report: any) => Count} count
 */
async function counted(file, tests, count) {
  rmSync(join(root, file), { force: true });
  let failure;
  try {
    await tests();
  } catch (error) {
    failure = error;
  }
  if (!existsSync(join(root, file))) throw failure ?? new CommandFailed("No test ran.");
  const { passed, failed } = count(JSON.parse(readFileSync(join(root, file), "utf8")));
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

/** @param {{ numPassedTests: number, numTotalTests: number }} report what was left out did not pass */
const countVitest = ({ numPassedTests, numTotalTests }) => ({
  passed: numPassedTests,
  failed: numTotalTests - numPassedTests,
});

const browser = async () => {
  const env = { CHROMIUM_PATH: await chromium(), PLAYWRIGHT_JSON_OUTPUT_NAME: browserReport };
  return run(node, ["node_modules/@playwright/test/cli.js", "test", "--reporter=line,json"], { env });
};

/** @param {{ stats: Record<"expected" | "unexpected" | "flaky" | "skipped", number> }} report a second try is no pass */
const countBrowser = ({ stats: { expected, unexpected, flaky, skipped } }) => ({
  passed: expected,
  failed: unexpected + flaky + skipped,
});

const lint = async () => {
  await run(node, ["node_modules/@biomejs/biome/bin/biome", "ci", "--error-on-warnings", "--colors=off"]);
};

const types = async () => {
  await run(node, ["node_modules/next/dist/bin/next", "typegen"]);
  await run(node, ["node_modules/typescript/bin/tsc", "--noEmit", "-p", "."]);
};

/** @type {[what: string, work: () => Promise<unknown>][]} */
const stages = [
  ["Install what is missing", install],
  ["Find a Chromium", chromium],
  ["Format and lint", lint],
  ["Types", types],
  ["Unit and server tests", () => counted(vitestReport, vitest, countVitest)],
  ["Build", build],
  ["Browser tests", () => counted(browserReport, browser, countBrowser)],
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
