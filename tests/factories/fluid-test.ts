import { day } from "#shared/day/day.ts";
import { onDay } from "#shared/day/when.ts";
import { concentration } from "#shared/review/concentration.ts";
import type { FluidResult, TestValue } from "#shared/review/fluid-test-schema.ts";
import type { FluidTest } from "#shared/review/newest-tests.ts";
import { confirmed, type Fact } from "#shared/tube/certainty.ts";

/** A confirmed value of so much in the analyte's own unit. */
export const found = (figure: number): Fact<TestValue> =>
  confirmed({ level: concentration(figure), asTyped: null });

/** A value whose unit nobody told. */
export const withoutUnit = (figure: number): Fact<TestValue> =>
  confirmed({ level: null, asTyped: `${figure} ?` });

/** Bilirubin of 85 umol/L in the fluid and 25 in serum, unless said otherwise. */
export const fluidResult = (overrides: Partial<FluidResult> = {}): FluidResult => ({
  analyte: "bilirubin",
  fluid: found(85),
  serum: found(25),
  upperLimit: null,
  ...overrides,
});

/** The same as it stands of a tube, from an entry of Fri 14 Aug 2026. */
export const fluidTest = (overrides: Partial<FluidTest> = {}): FluidTest => ({
  ...fluidResult(),
  eventId: "test-1",
  recordedOn: day("2026-08-14"),
  when: onDay(day("2026-08-14")),
  serumOn: null,
  ...overrides,
});
