import fc from "fast-check";
import { addDays, type Day, day } from "#shared/day/day.ts";
import { confirmed, type Fact, unknownFact } from "#shared/tube/certainty.ts";
import type { TubeEvent } from "#shared/tube/event.ts";
import { tubeKinds } from "#shared/tube/kind/kinds.ts";
import { feelings, findOuts, goingOn, reconcileAbouts, sides, whereabouts } from "#shared/tube/vocabulary.ts";
import { prerequisiteThings } from "#shared/visit/prerequisite-things.ts";
import { answerStates } from "#shared/visit/prerequisites.ts";
import { visitActs } from "#shared/visit/visit-acts.ts";
import * as make from "#tests/support/factories.ts";
import { history } from "#tests/support/told.ts";
import { visitBooked, visitMoved, visitNoted, visitPrepared } from "#tests/support/visit-factories.ts";

/**
 * Histories that no clinic would write: events before the placement, of tubes that nobody placed, after the end, twice, in any
 * order, of unknown date, with amendments of amendments and of nothing.
 */

const anyDay = fc.integer({ min: 0, max: 120 }).map((away) => addDays(day("2026-06-01"), away));
const span = (from: Day, days: number): string => `${from}..${addDays(from, days)}`;
const anyDate = fc.oneof(
  { weight: 6, arbitrary: anyDay.map(String) },
  { weight: 2, arbitrary: fc.tuple(anyDay, fc.integer({ min: 0, max: 40 })).map((of) => span(...of)) },
  { weight: 1, arbitrary: fc.constant("?") },
);
const tubes = ["tube-1", "tube-2", "tube-3"] as const;
const anyTube = fc.constantFrom(...tubes);
const anyYesNo: fc.Arbitrary<Fact<boolean>> = fc.constantFrom(
  confirmed(true),
  confirmed(false),
  unknownFact,
  {
    certainty: "reported",
    value: true,
  },
);
const anyWater: fc.Arbitrary<Fact<number>> = fc.constantFrom(confirmed(10), confirmed(8), unknownFact);
const anyPlan = fc.option(fc.record({ act: fc.constantFrom("exchange", "remove", "review"), by: anyDay }), {
  freq: 2,
});

const said = fc.record({
  on: anyDate,
  at: fc.option(fc.constantFrom("00:30", "09:00", "14:10"), { nil: undefined }),
  tube: anyTube,
  recordedOn: anyDay.map(String),
  pins: fc.constantFrom(undefined, undefined, undefined, null),
});

const opens = fc.record({
  kind: fc.constantFrom(...tubeKinds),
  side: fc.constantFrom(...sides, unknownFact),
  size: fc.constantFrom(make.F(8), make.F(10), unknownFact),
  plan: anyPlan,
  number: fc.integer({ min: 1, max: 3 }),
  cancerObstruction: anyYesNo,
});
const renews = fc.record({
  size: fc.constantFrom(make.F(10), unknownFact),
  plan: anyPlan,
  elsewhere: fc.constantFrom(null, "another hospital"),
});

const openingEntry = fc.oneof(
  fc.tuple(said, opens).map(([of, by]) => make.placed({ ...of, ...by })),
  fc.tuple(said, opens, anyDate).map(([of, by, tractSince]) => make.takenOver({ ...of, ...by, tractSince })),
);

const tubeEntry = fc.oneof(
  fc
    .tuple(
      said,
      renews,
      fc.constantFrom(make.exchanged, make.upsized, make.downsized, make.salvaged, make.newPuncture),
    )
    .map(([of, by, word]) => word({ ...of, ...by })),
  fc
    .tuple(
      said,
      fc.constantFrom(
        make.checked,
        make.capped,
        make.uncapped,
        make.tipPosition,
        make.partlyDislodged,
        make.notReplaced,
        make.factsNoted,
        make.verified,
        make.stepAssigned,
        make.called,
        make.datesConfirmed,
        make.exchangePlanned,
        make.repositioned,
        make.flushed,
        make.unblocked,
        make.trialStarted,
        make.trialPassed,
        make.trialFailed,
        make.suctionChanged,
        make.anchorsRemoved,
        make.blocked,
        make.leaking,
        make.infected,
        make.bled,
        make.fluidTested,
        make.handedOver,
        make.acceptedElsewhere,
        make.followUpEnded,
      ),
    )
    .map(([of, word]) => word(of)),
  fc.tuple(said, anyYesNo).map(([of, whole]) => make.fellOut({ ...of, whole })),
  fc
    .tuple(said, anyYesNo, fc.constantFrom(null, "the ward"))
    .map(([of, whole, toldBy]) => make.removed({ ...of, whole, toldBy })),
  fc.tuple(said, anyYesNo).map(([of, fragmentInside]) => make.broken({ ...of, fragmentInside })),
  fc.tuple(said, anyYesNo).map(([of, inPlace]) => make.tipPosition({ ...of, inPlace })),
  fc
    .tuple(said, anyWater, anyWater)
    .map(([of, found, refilled]) => make.balloonChecked({ ...of, found, refilled })),
  fc.tuple(said, anyDay).map(([of, by]) => make.removalDecided({ ...of, by })),
  fc.tuple(said, fc.subarray([...findOuts])).map(([of, findOut]) => make.transferred({ ...of, findOut })),
  fc.tuple(said, anyDate).map(([of, since]) => make.clockDated({ ...of, since })),
  fc.tuple(said, anyDay).map(([of, by]) => make.planRecorded({ ...of, act: "remove", by })),
);

const aVisit = { visit: "e4" };
const anyVisit = fc.oneof(
  fc
    .tuple(said, anyDay, fc.subarray([...tubes], { minLength: 1 }), fc.constantFrom(...visitActs))
    .map(([of, visitOn, named, act]) => ({
      ...visitBooked({ ...of, visitOn, tubes: named.map((tubeId) => ({ tubeId, act })) }),
      id: undefined,
    })),
  fc.tuple(said, anyDay).map(([of, visitOn]) => visitMoved({ ...of, ...aVisit, visitOn })),
  fc
    .tuple(said, fc.constantFrom("confirmed", "arrived", "done", "did not attend", "cancelled"))
    .map(([of, state]) => visitNoted({ ...of, ...aVisit, state })),
  fc
    .tuple(said, fc.constantFrom(...prerequisiteThings), fc.constantFrom(...answerStates))
    .map(([of, thing, state]) => visitPrepared({ ...of, ...aVisit, thing, state })),
);

const patientEntry = fc.oneof(
  fc
    .tuple(said, opens, anyTube, anyTube)
    .map(([of, by, closes, to]) => make.converted({ ...of, ...by, closes, opens: to })),
  said.map((of) => make.died(of)),
  fc
    .tuple(said, anyYesNo)
    .map(([of, pregnancy]) =>
      make.conditionsNoted({ ...of, conditions: { pregnancy, stoneFormer: pregnancy, hospice: pregnancy } }),
    ),
  fc
    .tuple(said, anyDay, fc.constantFrom(...goingOn), fc.constantFrom(...goingOn))
    .map(([of, until, calls, exchanges]) => make.hospiceDecided({ ...of, until, calls, exchanges })),
  fc
    .tuple(said, fc.constantFrom(...whereabouts))
    .map(([of, place]) => make.whereaboutsNoted({ ...of, place })),
  fc
    .tuple(said, fc.constantFrom(...feelings))
    .map(([of, feels]) => make.clinicalStateNoted({ ...of, findings: { feels: confirmed(feels) } })),
  anyVisit,
  fc
    .tuple(said, fc.constantFrom(...reconcileAbouts))
    .map(([of, about]) => make.reconcileAsked({ ...of, about })),
  fc
    .tuple(said, fc.subarray([...tubes], { minLength: 2 }))
    .map(([of, named]) =>
      make.reportedOut({ ...of, candidates: named.map((tube, n) => ({ tube, number: n + 1 })) }),
    ),
  fc
    .tuple(said, fc.constantFrom(...reconcileAbouts), fc.subarray([...tubes]), fc.constantFrom(...sides))
    .map(([of, about, named, side]) =>
      make.reconciled({
        ...of,
        about,
        sides: named.map((tube, n) => ({ tube, number: n + 1, side: confirmed(side) })),
      }),
    ),
);

const fact = fc.oneof(
  { weight: 2, arbitrary: openingEntry },
  { weight: 5, arbitrary: tubeEntry },
  { weight: 1, arbitrary: patientEntry },
);

const MOST = 14;
const anyId = fc.integer({ min: 1, max: MOST }).map((n) => `e${n}`);
const amendment = fc.oneof(
  fc.tuple(anyId, fact).map(([id, by]) => make.amended(id, by)),
  anyId.map((id) => make.voided(id)),
  fc.tuple(anyId, anyId).map(([id, other]) => make.amended(id, make.voided(other))),
);

/** Every entry gets its own sequence within the day, so that its place never rests on when it was recorded. */
const numbered = (entries: readonly make.Entry[]): TubeEvent[] =>
  history(...entries.map((entry, order) => ({ ...entry, daySequence: order })));

/** Facts without amendments. */
export const anyFacts = fc.array(fact, { maxLength: MOST }).map(numbered);

export const anyHistory = fc
  .array(fc.oneof({ weight: 5, arbitrary: fact }, { weight: 1, arbitrary: amendment }), { maxLength: MOST })
  .map(numbered);

/** Mostly believable: placed first, so that what follows finds a tube. */
export const anyLife = fc
  .tuple(opens, fc.array(fc.oneof(tubeEntry, patientEntry), { maxLength: MOST - 1 }))
  .map(([by, entries]) => numbered([make.placed({ ...by, on: "2026-05-01", tube: "tube-1" }), ...entries]));
