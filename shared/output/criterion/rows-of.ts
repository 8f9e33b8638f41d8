import type { CriterionRow, LackingRow } from "#shared/output/criterion/criterion.ts";
import { lowRowOf } from "#shared/output/low-row.ts";
import type { OutputRows } from "#shared/protocol/output-rows.ts";
import type { Protocol } from "#shared/protocol/protocol.ts";
import type { Age18 } from "#shared/step/draft.ts";
import type { TubeState } from "#shared/tube/state.ts";

export type CriterionRows = {
  readonly row: CriterionRow;
  /** Hours that the last complete day, or session, may be old; null is "no row". */
  readonly age: number | null;
  readonly patient: Pick<OutputRows, "clinicalStateHours" | "fever">;
};

function rowOf(
  { kind, role }: TubeState,
  { output, outputRows, version, approved }: Protocol,
): CriterionRow | null {
  const of = { version, approved: approved !== null };
  const chest = outputRows?.chestTube ?? null;
  const sessions = outputRows?.sessions.find(({ kinds }) => kinds.includes(kind));
  switch (role) {
    case "collection": {
      const { lowNetMl: underMl, lowDays: running, source } = lowRowOf(kind, { output, outputRows });
      return { what: "net days", underMl, running, source, ...of };
    }
    case "air and fluid":
      return chest?.kinds.includes(kind)
        ? {
            what: "chest tube",
            noAirLeakHours: chest.noAirLeakHours,
            underMl: chest.underMlPer24h,
            running: 1,
            source: chest.source,
            ...of,
          }
        : null;
    case "intermittent":
      return sessions === undefined || sessions.lowMl === null || sessions.lowSessions === null
        ? null
        : {
            what: "sessions",
            underMl: sessions.lowMl,
            running: sessions.lowSessions,
            source: sessions.source,
            ...of,
          };
    default:
      return null;
  }
}

type Asked = { readonly tube: TubeState; readonly age: Age18; readonly protocol: Protocol };

/** The rows that this tube is held against, or which one the table lacks. It is for adults: for a child it has none. */
export function rowsOf({ tube, age, protocol }: Asked): CriterionRows | { readonly lacks: LackingRow } {
  if (age === "under 18") return { lacks: "for a child" };
  const row = rowOf(tube, protocol);
  if (row === null) return { lacks: "for this kind" };
  const { outputRows } = protocol;
  return {
    row,
    age: outputRows?.lastCompleteDayHours?.hours ?? null,
    patient: {
      clinicalStateHours: outputRows?.clinicalStateHours ?? null,
      fever: outputRows?.fever ?? null,
    },
  };
}
