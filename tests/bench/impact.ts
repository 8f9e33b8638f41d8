import type { Database } from "#db/sqlite.ts";
import { newId } from "#server/ids.ts";
import { changeDraft, dropDraft } from "#server/protocol/draft.ts";
import { draftImpact } from "#server/protocol/draft-impact.ts";
import type { Protocol } from "#shared/protocol/protocol.ts";
import type { Figure } from "#tests/bench/figure.ts";
import { median, msOf } from "#tests/bench/sample.ts";
import { people } from "#tests/support/database.ts";

const TURNS = 5;

/** 63 / 77 / 90 as 49 / 63 / 77. */
const shorter = (protocol: Protocol): Protocol => ({
  ...protocol,
  intervals: protocol.intervals.map((row) =>
    row.id === "nephrostomy" ? { ...row, earliest: 49, target: 63, latest: 77 } : row,
  ),
});

/** Asks every tube, of whatever kind. */
const askedSooner = (protocol: Protocol): Protocol => ({
  ...protocol,
  escalation: { ...protocol.escalation, daysPastTarget: protocol.escalation.daysPastTarget + 1 },
});

function previewed(db: Database, what: string, change: (protocol: Protocol) => Protocol): Figure {
  const input = { what };
  const drafting = { db, staff: people.lead };
  const { revision } = changeDraft(drafting, { actId: newId(), revision: 0, input, change });
  const read = () => db.sqlite.prepare("select state from tubes where status <> 'ended'").pluck().all();
  const times = Array.from({ length: TURNS }, () => [
    msOf(() => draftImpact(db, { page: 1 })),
    msOf(read),
  ]).slice(1);
  dropDraft(drafting, { actId: newId(), revision });
  return {
    what,
    value: median(times.map(([ours = 0]) => ours)),
    unit: "ms",
    floor: {
      is: "the tubes' rows read by the driver alone",
      value: median(times.map(([, floor = 0]) => floor)),
    },
    aim: { kind: "at most", value: 1000 },
  };
}

/** Whom a changed row would touch, over all tubes in place, from the draft to the first page of them. */
export const impactFigures = (db: Database): Figure[] => [
  previewed(db, "impact of another nephrostomy row, 20,000 tubes", shorter),
  previewed(db, "impact of a row that touches every tube, 20,000 tubes", askedSooner),
];
