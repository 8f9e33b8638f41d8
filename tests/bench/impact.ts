import type { Database } from "#db/sqlite.ts";
import { newId } from "#server/ids.ts";
import { changeDraft, dropDraft } from "#server/protocol/draft.ts";
import type { Protocol } from "#shared/protocol/protocol.ts";
import type { Figure } from "#tests/bench/figure.ts";
import { median, msOf } from "#tests/bench/sample.ts";
import { cookieOf, pageText, serveBuilt } from "#tests/bench/served.ts";
import { people } from "#tests/support/database.ts";

const TURNS = 9;

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

type Clinic = { readonly file: string; readonly db: Database };

/** The page that says whom a draft touches, from the built server, its first hundred lines included; the first answer warms up and is left out. */
async function previewed(
  { file, db }: Clinic,
  what: string,
  change: (protocol: Protocol) => Protocol,
): Promise<Figure> {
  const input = { what };
  const drafting = { db, staff: people.lead };
  const { revision } = changeDraft(drafting, { actId: newId(), revision: 0, input, change });
  const cookie = cookieOf(file, "lead");
  const read = () => db.sqlite.prepare("select state from tubes where status <> 'ended'").pluck().all();
  const ours: number[] = [];
  const floor: number[] = [];
  await using server = await serveBuilt(file);
  for (let turn = 0; turn < TURNS; turn += 1) {
    const began = performance.now();
    await pageText(`${server.origin}/protocol/impact`, cookie);
    ours.push(performance.now() - began);
    floor.push(msOf(read));
  }
  dropDraft(drafting, { actId: newId(), revision });
  return {
    what,
    value: median(ours.slice(1)),
    unit: "ms",
    floor: { is: "the tubes' rows read by the driver alone", value: median(floor.slice(1)) },
    aim: { kind: "at most", value: 1000 },
  };
}

/** Whom a changed row would touch, over all tubes in place, from the draft to the page with the first of them. */
export async function impactFigures(file: string, db: Database): Promise<readonly Figure[]> {
  const clinic = { file, db };
  return [
    await previewed(clinic, "impact of another nephrostomy row, 20,000 tubes, its page", shorter),
    await previewed(clinic, "impact of a row that touches every tube, 20,000 tubes, its page", askedSooner),
  ];
}
