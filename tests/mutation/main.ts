import { Stryker } from "@stryker-mutator/core";

/**
 * `npm run mutation -- ROOM`: spoils each expression of a room of shared/ (size and fit unless named) and counts how many of the spoilt
 * versions the unit tests notice. Prints every survivor. A figure, not a check: it fails only when it did not run.
 */
const ROOMS = ["size", "fit"];
/** Thousands of runs: laws are tried with fewer cases. */
const GENERATED_CASES = "20";

const asked = process.argv.slice(2);
const rooms = asked.length > 0 ? asked : ROOMS;
process.env.GENERATED_CASES = GENERATED_CASES;

for (const room of rooms) {
  const started = performance.now();
  const results = await new Stryker({
    mutate: [`shared/${room}/**/*.ts`, `!shared/${room}/**/*.test.ts`],
    testRunner: "vitest",
    vitest: { configFile: "tests/mutation/vitest.config.ts" },
    coverageAnalysis: "perTest",
    reporters: ["clear-text", "progress"],
    clearTextReporter: { logTests: false, allowColor: false },
    concurrency: 2,
    // The compiler of this project is newer than the reader of its settings.
    tsconfigFile: "none.json",
    tempDirName: ".mutation",
    allowEmpty: false,
    thresholds: { high: 90, low: 90, break: null },
  }).runMutationTest();
  const killed = results.filter(({ status }) => status === "Killed" || status === "Timeout").length;
  const counted = results.filter(({ status }) => status !== "Ignored" && status !== "CompileError").length;
  const share = counted === 0 ? 0 : (100 * killed) / counted;
  const minutes = (performance.now() - started) / 60_000;
  process.stdout.write(
    `shared/${room}: ${killed} of ${counted} spoilt versions noticed, ${share.toFixed(1)} % (aim 90 %), in ${minutes.toFixed(1)} min (aim 20)\n`,
  );
}
