import { statSync } from "node:fs";
import { Stryker } from "@stryker-mutator/core";

/**
 * `npm run mutation -- [WHERE...]`: spoils each expression of a room of shared/ and counts how many of the spoilt versions the unit tests
 * notice. Prints every survivor. WHERE is a folder or a file under shared/, such as `size`, `output/alarm` or `output/alarm/relief.ts`; a
 * folder stands for all that is in it, one that ends in `/*` for its own files alone (`output/*`); without any, each of the rooms below.
 * A figure, not a check: it fails only when it did not run.
 */
const ROOMS = ["size", "fit", "output", "review", "visit"];
/** A version that only took long on a busy machine has not been noticed. */
const TIMEOUT_MS = 30_000;
/** Thousands of runs: laws are tried with fewer cases. */
const GENERATED_CASES = "20";

const asked = process.argv.slice(2);
const places = asked.length > 0 ? asked : ROOMS;
process.env.GENERATED_CASES = GENERATED_CASES;

/** The files of a place, as patterns. Throws where there is no such place. */
function filesOf(place: string): string[] {
  const path = `shared/${place}`;
  if (path.endsWith("/*")) return [`${path}.ts`];
  return [statSync(path).isDirectory() ? `${path}/**/*.ts` : path];
}

for (const place of places) {
  const started = performance.now();
  const results = await new Stryker({
    mutate: [...filesOf(place), "!**/*.test.ts"],
    testRunner: "vitest",
    vitest: { configFile: "tests/mutation/vitest.config.ts" },
    coverageAnalysis: "perTest",
    reporters: ["clear-text", "progress"],
    clearTextReporter: { logTests: false, allowColor: false },
    concurrency: 2,
    timeoutMS: TIMEOUT_MS,
    // What is made once at a file's start would have every test run for each of its versions.
    ignoreStatic: true,
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
    `shared/${place}: ${killed} of ${counted} spoilt versions noticed, ${share.toFixed(1)} % (aim 90 %), in ${minutes.toFixed(1)} min (aim 20)\n`,
  );
}
