import type { Day } from "#shared/day/day.ts";
import type { PassageRows, WirePassage } from "#shared/fit/passage.ts";
import { type PlannedPassages, plannedPassages, type TubeInPlace } from "#shared/fit/planned-passages.ts";
import type { RowAnswer } from "#shared/protocol/find-row.ts";
import type { Protocol } from "#shared/protocol/protocol.ts";
import type { OpenStep } from "#shared/step/step.ts";
import type { Payload } from "#shared/tube/payloads.ts";
import type { TubeState } from "#shared/tube/state.ts";

/** A tube as it is in: its record, its open steps, the row that it is under, and the day. */
export type InPlace = {
  readonly tube: TubeState;
  readonly steps: readonly OpenStep[];
  readonly row: RowAnswer;
  readonly passage: Protocol["passage"];
  readonly today: Day;
};

/** The clinic's rows for a measured bore. None is made for a child: the example table is for adults. */
export const passageRowsOf = ({ row, passage }: Pick<InPlace, "row" | "passage">): PassageRows =>
  row.found === "no example for a child"
    ? {
        clearance: undefined,
        boreTolerance: undefined,
        outsideTolerance: { wire: undefined, device: undefined },
      }
    : {
        clearance: passage.clearance,
        boreTolerance: passage.boreTolerance,
        outsideTolerance: {
          wire: passage.outsideTolerance.wire ?? undefined,
          device: passage.outsideTolerance.device ?? undefined,
        },
      };

/** What a wire meets in the tube that is in. */
export function tubeInPlace({ tube, steps, today }: Pick<InPlace, "tube" | "steps" | "today">): TubeInPlace {
  const { inside, size, concerns } = tube;
  const pastLatest = steps.some(({ kind, latest }) => kind !== "call" && latest !== null && latest < today);
  return { inside, size, concerns, pastLatest };
}

type Planned = Pick<Payload<"exchange planned">, "wire" | "takes" | "size">;

/** The wire of a planned exchange in both tubes. */
export const passagesOfPlan = (planned: Planned, at: InPlace): PlannedPassages =>
  plannedPassages(planned, tubeInPlace(at), passageRowsOf(at));

function codesOf(which: string, { bySize, byState }: WirePassage): string[] {
  const size =
    bySize.verdict === "cannot tell"
      ? bySize.missing.map((missing) =>
          "place" in missing ? `${missing.what} ${missing.place}` : missing.what,
        )
      : ["place" in bySize.decides ? bySize.decides.place : bySize.decides.basis];
  const state = byState.state === "in doubt" ? byState.concerns : [];
  return [
    [which, "by size", bySize.verdict, ...size].join("; "),
    [which, "by state", byState.state, ...state].join("; "),
  ];
}

/** Both answers as codes, for the plan to keep what was seen when it was made: "tube in place; by size; does not pass; label". */
export const seenCodes = ({ inPlace, toCome }: PlannedPassages): string[] => [
  ...codesOf("tube in place", inPlace.answer),
  ...codesOf("tube to come", toCome.answer),
];
