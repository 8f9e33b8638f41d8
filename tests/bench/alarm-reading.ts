import { addAct } from "#db/queries/acts.ts";
import { addReading } from "#db/queries/readings.ts";
import { connect, type Database } from "#db/sqlite.ts";
import { inTransaction, type Tx } from "#db/transaction.ts";
import { now } from "#server/clock.ts";
import { newId } from "#server/ids.ts";
import { recordReading } from "#server/output/record-reading.ts";
import { readingRow } from "#server/output/stored-reading.ts";
import { type Instant, instant } from "#shared/day/instant.ts";
import type { Figure } from "#tests/bench/figure.ts";
import { byTurns, percentile } from "#tests/bench/sample.ts";
import { gross, reading } from "#tests/factories/reading.ts";
import { people } from "#tests/support/database.ts";

const TURNS = 500;
const TUBES = 25;
const LOGGED = 120;
const FOUR_HOURS = 4 * 3_600_000;

type Drain = { readonly tubeId: string; readonly patientId: string };

const texts = { drained: "220", flushGiven: "5", to: "now", characters: "urine-like", leak: "none" };

/** Twenty days of a diary, six emptyings a day, up to four hours ago. */
function fillLog(tx: Tx, { tubeId, patientId }: Drain, at: Instant): void {
  const actId = newId();
  const staffId = people.caller.id;
  addAct(tx, { id: actId, staffId, command: "bench", inputHash: "-", result: "null", recordedAt: at });
  for (let back = LOGGED; back > 0; back -= 1) {
    const to = instant(at - back * FOUR_HOURS);
    const one = reading({ id: newId(), tubeId, from: instant(to - FOUR_HOURS), to, gross: gross(220) });
    const urine = { ...one, characters: ["urine-like" as const] };
    addReading(tx, readingRow(urine, { patientId, actId, recordedAt: at, recordedBy: staffId }));
  }
}

/** An emptying of a tube with 120 on its log, its alarm and the steps of its patient computed anew, fsync included. */
export function alarmReadingFigure(file: string, db: Database): Figure {
  const drains = db.sqlite
    .prepare<[number], Drain>(
      "select id as tubeId, patient_id as patientId from tubes where kind = 'nephrostomy' and status = 'in' limit ?",
    )
    .all(TUBES);
  if (drains.length < TUBES) throw new Error("too few nephrostomies are in");
  inTransaction(db, (tx) => {
    for (const drain of drains) fillLog(tx, drain, now(tx));
  });
  const plain = connect(`${file}-alarm-floor.sqlite`);
  plain.sqlite.exec("create table one (at real) strict");
  const insert = plain.sqlite.prepare("insert into one values (?)");
  const doing = { db, staff: people.caller };
  let turn = 0;
  const times = byTurns(
    TURNS,
    () => {
      const drain = drains[turn % TUBES] ?? { tubeId: "", patientId: "" };
      turn += 1;
      recordReading(doing, { actId: newId(), lastSeen: 0, ...drain, texts });
    },
    () => insert.run(performance.now()),
  );
  plain.sqlite.close();
  return {
    what: "saving a reading with its alarms, p99",
    value: percentile(times.ours, 99),
    unit: "ms",
    floor: { is: "one row of one number, fsync included, p99", value: percentile(times.floor, 99) },
    aim: { kind: "at most", value: 10 },
  };
}
