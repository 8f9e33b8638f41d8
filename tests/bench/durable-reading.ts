import type { Database } from "#db/sqlite.ts";
import { connect } from "#db/sqlite.ts";
import { newId } from "#server/ids.ts";
import { recordReading } from "#server/output/record-reading.ts";
import type { Figure } from "#tests/bench/figure.ts";
import { byTurns, percentile } from "#tests/bench/sample.ts";
import { people } from "#tests/support/database.ts";

const TURNS = 500;

type Drain = { readonly tubeId: string; readonly patientId: string };

const texts = { drained: "35", flushGiven: "10", to: "now", characters: "serous", leak: "none" };

/** An emptying from the form's texts to the disk: session and network left out, fsync included. */
export function durableReadingFigure(file: string, db: Database): Figure {
  const drain = db.sqlite
    .prepare<[], Drain>(
      "select id as tubeId, patient_id as patientId from tubes where kind = 'abscess drain' and status = 'in'",
    )
    .get();
  if (drain === undefined) throw new Error("no abscess drain is in");
  const plain = connect(`${file}-floor.sqlite`);
  plain.sqlite.exec("create table one (at real) strict");
  const insert = plain.sqlite.prepare("insert into one values (?)");
  const doing = { db, staff: people.caller };
  const times = byTurns(
    TURNS,
    () => recordReading(doing, { actId: newId(), lastSeen: 0, ...drain, texts }),
    () => insert.run(performance.now()),
  );
  plain.sqlite.close();
  return {
    what: "a durable reading, p99",
    value: percentile(times.ours, 99),
    unit: "ms",
    floor: { is: "one row of one number, fsync included, p99", value: percentile(times.floor, 99) },
    aim: null,
  };
}
