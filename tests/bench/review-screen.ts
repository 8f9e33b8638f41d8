import { addAct } from "#db/queries/acts.ts";
import { addReading } from "#db/queries/readings.ts";
import type { Database } from "#db/sqlite.ts";
import { inTransaction, type Tx } from "#db/transaction.ts";
import { now } from "#server/clock.ts";
import { newId } from "#server/ids.ts";
import { readingRow } from "#server/output/stored-reading.ts";
import { rebuildAll } from "#server/record/rebuild.ts";
import { type Instant, instant } from "#shared/day/instant.ts";
import type { Figure } from "#tests/bench/figure.ts";
import { median } from "#tests/bench/sample.ts";
import { cookieOf, pageText, serveBuilt } from "#tests/bench/served.ts";
import { gross, reading } from "#tests/factories/reading.ts";
import { people } from "#tests/support/database.ts";

const EACH = 120;
const FEW = 10_000;
const MANY = 1_000_000;
const PAGES = 60;
const WARM = 20;
const EIGHT_HOURS = 8 * 3_600_000;
/** Of a hundred tubes so many drain on, so that the queue has to look at them. */
const DRAIN_ON = 2;

type Drain = { readonly tubeId: string; readonly patientId: string; readonly kind: string };

/** Forty days, three emptyings a day, up to now: a steady organ, a collection over its row. */
function fillLog(tx: Tx, { tubeId, patientId, kind }: Drain, by: { actId: string; at: Instant; ml: number }) {
  const staffId = people.caller.id;
  const characters = [kind === "nephrostomy" ? ("urine-like" as const) : ("serous" as const)];
  for (let back = EACH; back > 0; back -= 1) {
    const to = instant(by.at - (back - 1) * EIGHT_HOURS);
    const from = instant(to - EIGHT_HOURS);
    const one = reading({ id: newId(), tubeId, from, to, gross: gross(by.ml), characters });
    addReading(tx, readingRow(one, { patientId, actId: by.actId, recordedAt: by.at, recordedBy: staffId }));
  }
}

function fill(db: Database, drains: readonly Drain[]): void {
  inTransaction(db, (tx) => {
    const at = now(tx);
    const actId = newId();
    const staffId = people.caller.id;
    addAct(tx, { id: actId, staffId, command: "bench", inputHash: "-", result: "null", recordedAt: at });
    drains.forEach((drain, index) => {
      const drainsOn = index % 100 < DRAIN_ON;
      fillLog(tx, drain, { actId, at, ml: drain.kind === "nephrostomy" ? 400 : drainsOn ? 20 : 12 });
    });
  });
  rebuildAll(db);
}

async function pageMs(file: string, tubes: readonly Drain[]): Promise<number> {
  await using server = await serveBuilt(file);
  const cookie = cookieOf(file, "physician");
  const address = (turn: number) => `${server.origin}/tubes/${tubes[turn % tubes.length]?.tubeId}/review`;
  const times: number[] = [];
  for (let turn = 0; turn < WARM + PAGES; turn += 1) {
    const began = performance.now();
    await pageText(address(turn), cookie);
    if (turn >= WARM) times.push(performance.now() - began);
  }
  return median(times);
}

/**
 * The review of a tube with 120 readings, over HTTP, where so many others stand in the database: a clinic's record grows for years, and the
 * screen asks of one tube, and of its place among those that wait.
 */
export async function reviewScreenFigure(file: string, db: Database): Promise<readonly Figure[]> {
  const drains = db.sqlite
    .prepare<[number], Drain>(
      `select id as tubeId, patient_id as patientId, kind from tubes
       where kind in ('nephrostomy', 'abscess drain') and status = 'in' order by id limit ?`,
    )
    .all(Math.ceil(MANY / EACH));
  if (drains.length < MANY / EACH) throw new Error("too few tubes with output are in");
  const few = drains.slice(0, Math.ceil(FEW / EACH));
  fill(db, few);
  const floor = await pageMs(file, few.slice(0, 20));
  fill(db, drains.slice(few.length));
  const value = await pageMs(file, few.slice(0, 20));
  return [
    {
      what: `the review of a tube at ${MANY.toLocaleString("en-US")} readings`,
      value,
      unit: "ms",
      floor: { is: `the same at ${FEW.toLocaleString("en-US")}`, value: floor },
      aim: { kind: "at most, of the floor", times: 1.5 },
    },
  ];
}
