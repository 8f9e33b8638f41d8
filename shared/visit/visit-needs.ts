import type { PlanningRows } from "#shared/protocol/planning-rows.ts";
import { addressOf } from "#shared/protocol/rows/address.ts";
import type { RoomRow } from "#shared/protocol/visit-rows.ts";
import type { TubeKind } from "#shared/tube/kind/kinds.ts";
import { type Ability, abilities } from "#shared/visit/room.ts";
import type { VisitAct } from "#shared/visit/visit-acts.ts";

export type VisitTube = { readonly tubeId: string; readonly kind: TubeKind; readonly act: VisitAct };

/** What one tube adds to a visit. `row` is the address of the row that says so. */
export type NeedLine = VisitTube &
  (
    | {
        /** `counts whole`: a further tube of which the row has no shorter time. */
        readonly code: "first" | "further" | "counts whole";
        readonly minutes: number;
        readonly row: string;
        readonly source: string;
      }
    | { readonly code: "no row" }
  );

export type VisitNeeds = {
  /** Null where it cannot be told: a tube has no row, or there is none. */
  readonly minutes: number | null;
  /** In the order of `abilities`; of tubes without a row nothing is known, so that it may lack some. */
  readonly needs: readonly Ability[];
  /** The first tube, the further ones from the longest on, those without a row. */
  readonly lines: readonly NeedLine[];
};

type Found = { readonly tube: VisitTube; readonly row: RoomRow; readonly at: string };

const shorter = ({ further, minutes }: RoomRow): number => further ?? minutes;

const orderOf = ({ tubeId, act, kind }: VisitTube): string => JSON.stringify([tubeId, act, kind]);
const compareTubes = (a: VisitTube, b: VisitTube): number => (orderOf(a) < orderOf(b) ? -1 : 1);

/** The longest first. Of two equally long, the one whose further time is shorter is the first: the visit is then not booked too short. */
const longestFirst = (a: Found, b: Found): number =>
  b.row.minutes - a.row.minutes || shorter(a.row) - shorter(b.row) || compareTubes(a.tube, b.tube);

function find(tube: VisitTube, rows: readonly RoomRow[]): Found | null {
  const place = rows.findIndex(({ kinds, acts }) => kinds.includes(tube.kind) && acts.includes(tube.act));
  const row = rows[place];
  return row === undefined ? null : { tube, row, at: addressOf("planning.room", place + 1) };
}

function lineOf({ tube, row, at }: Found, isFirst: boolean): NeedLine & { readonly minutes: number } {
  const from = { ...tube, row: at, source: row.source };
  if (isFirst) return { ...from, code: "first", minutes: row.minutes };
  return { ...from, code: row.further === null ? "counts whole" : "further", minutes: shorter(row) };
}

/**
 * How long a visit takes, in minutes, and what its room must be able to do, by the clinic's rows: the longest tube counts whole, each
 * further one as its row says. The order of the tubes changes nothing. A tube without a row makes the minutes unknown: somebody types them.
 */
export function visitNeeds(
  tubes: readonly VisitTube[],
  planning: Pick<PlanningRows, "room"> | null,
): VisitNeeds {
  const rows = planning?.room ?? [];
  const found = tubes.flatMap((tube) => find(tube, rows) ?? []).toSorted(longestFirst);
  const lines = found.map((one, place) => lineOf(one, place === 0));
  const without = tubes
    .filter((tube) => find(tube, rows) === null)
    .toSorted(compareTubes)
    .map((tube): NeedLine => ({ ...tube, code: "no row" }));
  return {
    minutes:
      tubes.length === 0 || without.length > 0 ? null : lines.reduce((sum, { minutes }) => sum + minutes, 0),
    needs: abilities.filter((ability) => found.some(({ row }) => row.needs.includes(ability))),
    lines: [...lines, ...without],
  };
}
