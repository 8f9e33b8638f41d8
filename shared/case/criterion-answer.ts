import type { Json } from "#shared/case/json.ts";
import type { Looking } from "#shared/case/looking.ts";
import type { Zone } from "#shared/day/instant.ts";
import { printInstant } from "#shared/day/print-day.ts";
import { criterionOf } from "#shared/output/criterion/criterion-of.ts";
import { ageOf } from "#shared/step/open-steps.ts";
import type { TubeState } from "#shared/tube/state.ts";
import { besideSentence, reasonSentence, rowSentence, verdictSentence } from "#shared/words/criterion.ts";

/** The clinic's criterion for a tube, as its output page shows it. */
export function criterionAnswer(
  { readings, now, protocol, state, books }: Looking,
  tube: TubeState,
  zone: Zone,
): Json {
  const { tubes, clinical, conditions } = state;
  const age = ageOf(tube, books.bornOn);
  const asked = { tube, tubes, readings, clinical, conditions, age, protocol, zone, now };
  const criterion = criterionOf(asked);
  const { kind, because, beside, row, evidence } = criterion;
  return {
    verdict: kind,
    sentence: verdictSentence(criterion, zone),
    because: because.map(({ code }) => code),
    says: because.map((reason) => reasonSentence(reason, zone)),
    beside: beside.map(({ code }) => code),
    besideSays: beside.map(besideSentence),
    row: row === null ? null : rowSentence(row),
    days: Object.fromEntries(
      evidence.days.map(({ day, state: of, mlPer24h }) => [day, { state: of, mlPer24h }]),
    ),
    sessions: Object.fromEntries(
      evidence.sessions.map(({ at, state: of, ml }) => [printInstant(at, zone), { state: of, ml }]),
    ),
  };
}
