import type { Day } from "#shared/day/day.ts";
import type { When } from "#shared/day/when.ts";
import type { Analyte } from "#shared/review/analyte.ts";
import type { FluidResult } from "#shared/review/fluid-test-schema.ts";

/** A test of the fluid that stands: its entry, when the fluid was taken, and when the serum was, null for the same day. */
export type FluidTest = FluidResult & {
  readonly eventId: string;
  readonly recordedOn: Day;
  readonly when: When;
  readonly serumOn: When | null;
};

/** The newest test of each analyte; one that was never tested is absent. */
export type FluidTests = { readonly [A in Analyte]?: FluidTest };

/** The tests with what was found now. Results come in the order in which the fluid was taken. */
export function withResults(
  tests: FluidTests,
  results: readonly FluidResult[],
  of: Pick<FluidTest, "eventId" | "recordedOn" | "when" | "serumOn">,
): FluidTests {
  const found = results.map((result) => [result.analyte, { ...result, ...of }]);
  return { ...tests, ...Object.fromEntries(found) };
}
