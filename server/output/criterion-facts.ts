import { cavityOf } from "#shared/output/criterion/cavity.ts";
import type { CriterionInput } from "#shared/output/criterion/criterion-input.ts";
import { ageOf, type Books } from "#shared/step/open-steps.ts";
import type { PatientTubes, TubeState } from "#shared/tube/state.ts";

/** What a tube's criterion is judged by, at whatever moment: its patient's record and the readings of every tube of its cavity. */
export const criterionFacts = (
  tube: TubeState,
  { tubes, clinical, conditions }: PatientTubes,
  books: Books,
): Omit<CriterionInput, "now"> => ({
  tube,
  tubes,
  readings: cavityOf(tube, tubes).draining.flatMap(({ id }) => books.readings(id)),
  clinical,
  conditions,
  age: ageOf(tube, books.bornOn),
  protocol: books.protocol(tube.pins.protocol),
  zone: books.zone,
});
