import type { Day } from "#shared/day/day.ts";
import type { ExchangeAnswer, PlanRows, PlanTube } from "#shared/fit/exchange-plan.ts";
import type { BySize, PassageRows } from "#shared/fit/passage.ts";
import type { RowAnswer } from "#shared/protocol/find-row.ts";
import type { Protocol } from "#shared/protocol/protocol.ts";
import { tractAges } from "#shared/protocol/tract-ages.ts";
import type { OpenStep } from "#shared/step/step.ts";
import type { CheckedOn } from "#shared/tube/exchange-planned.ts";
import type { Conditions } from "#shared/tube/payloads.ts";
import { slowToHeal } from "#shared/tube/slow-to-heal.ts";
import type { TubeState } from "#shared/tube/state.ts";

/** A tube as it is in: its record, its open steps, the row that it is under, the clinic's rows, and the day. */
export type InPlace = {
  readonly tube: TubeState;
  readonly steps: readonly OpenStep[];
  readonly conditions: Conditions;
  readonly row: RowAnswer;
  readonly rows: Pick<Protocol, "passage" | "planning" | "bleeding">;
  readonly today: Day;
};

const NO_ROWS: PassageRows = {
  clearance: undefined,
  boreTolerance: undefined,
  outsideTolerance: { wire: undefined, device: undefined },
};

/** The clinic's rows for a measured bore. None is made for a child: the example table is for adults. */
export function passageRowsOf(
  row: RowAnswer,
  { clearance, boreTolerance, outsideTolerance }: Protocol["passage"],
): PassageRows {
  if (row.found === "no example for a child") return NO_ROWS;
  const { wire, device } = outsideTolerance;
  return {
    clearance,
    boreTolerance,
    outsideTolerance: { wire: wire ?? undefined, device: device ?? undefined },
  };
}

/** What a planned exchange is held against: the tube and its tract, and the rows. */
export function planBeside({ tube, steps, conditions, row, rows, today }: InPlace): {
  readonly tube: PlanTube;
  readonly rows: PlanRows;
} {
  const { kind, size, inside, concerns, fullLength, externalLength, retention, route } = tube;
  return {
    tube: {
      kind,
      size,
      inside,
      concerns,
      fullLength,
      externalLength,
      retention,
      pastLatest: steps.some((step) => step.kind !== "call" && step.latest !== null && step.latest < today),
      tractSince: tube.tract.since.latest ?? tube.tractBy,
      today,
      tractAges:
        row.found === "row"
          ? tractAges(row.row, { route, slowToHeal: slowToHeal(conditions).yes.length > 0 })
          : null,
    },
    rows: {
      passage: passageRowsOf(row, rows.passage),
      planning: rows.planning,
      bleeding: rows.bleeding,
    },
  };
}

/** The facts of the tube in place, as a plan keeps them. */
export const checkedOn = ({
  size,
  inside,
  concerns,
  fullLength,
  externalLength,
  retention,
}: Pick<
  PlanTube,
  "size" | "inside" | "concerns" | "fullLength" | "externalLength" | "retention"
>): CheckedOn => ({
  size,
  takes: inside.takes,
  bores: [...inside.bores],
  endHole: inside.endHole,
  concerns: [...concerns],
  fullLength,
  externalLength,
  retention,
});

/** Which facts are others now than those that a plan was checked on. */
export const changedSince = (then: CheckedOn, now: CheckedOn): readonly (keyof CheckedOn)[] =>
  (Object.keys(now) as (keyof CheckedOn)[]).filter(
    (fact) => JSON.stringify(then[fact]) !== JSON.stringify(now[fact]),
  );

function sizeCode(which: string, bySize: BySize): string {
  const said =
    bySize.verdict === "cannot tell"
      ? bySize.missing.map((missing) =>
          "place" in missing ? `${missing.what} ${missing.place}` : missing.what,
        )
      : ["place" in bySize.decides ? bySize.decides.place : bySize.decides.basis];
  return [which, "by size", bySize.verdict, ...said].join("; ");
}

/** Every answer as a code, for the plan to keep what was seen when it was made: "tube in place; by size; does not pass; label". */
export function seenCodes({
  throughOld,
  throughNew,
  throughSheath,
  length,
  step,
  tract,
}: ExchangeAnswer): string[] {
  const { pair, byState } = throughOld;
  const state = byState.state === "in doubt" ? byState.concerns : [];
  const missing = (answer: { readonly verdict: string; readonly missing?: readonly string[] }): string[] => [
    answer.verdict,
    ...(answer.missing ?? []),
  ];
  return [
    sizeCode("tube in place", pair.bySize),
    ["tube in place", "by state", byState.state, ...state].join("; "),
    ...throughNew.pairs.map(({ outer, bySize }) =>
      sizeCode(outer.sort === "tube" ? "tube to come" : outer.sort, bySize),
    ),
    ...(throughSheath?.pairs ?? []).map(({ bySize }) => sizeCode("sheath", bySize)),
    ["wire length", ...missing(length)].join("; "),
    ["step", ...missing(step)].join("; "),
    ["tract", tract.maturity].join("; "),
  ];
}
