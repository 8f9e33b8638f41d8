import { drizzle } from "drizzle-orm/better-sqlite3";
import { dueSteps } from "#db/queries/step-lists.ts";
import { connect, type Database } from "#db/sqlite.ts";
import { today } from "#server/clock.ts";
import { everything } from "#shared/record/list-filter.ts";
import type { Figure } from "#tests/bench/figure.ts";
import { byTurns, median } from "#tests/bench/sample.ts";

const ROWS = 50;
const TURNS = 1500;

const asking = (db: Database) => ({ today: today(db), limit: ROWS, skip: 0, filter: everything });

type Asked = { readonly sql: string; readonly params: readonly unknown[] };

/** What the named query asks the driver, heard on a connection of its own. */
function asked(file: string): Asked {
  const { sqlite } = connect(file);
  const heard: Asked[] = [];
  const orm = drizzle(sqlite, { logger: { logQuery: (sql, params) => heard.push({ sql, params }) } });
  const heardOn = { sqlite, orm };
  const on = asking(heardOn);
  heard.length = 0;
  dueSteps(heardOn, on);
  sqlite.close();
  const [only, ...more] = heard;
  if (only === undefined || more.length > 0) throw new Error("the due list is one query");
  return only;
}

/**
 * The first 50 rows of the due list: the named query against the same SQL, its rows as the driver gives them to whoever asks it by
 * hand: objects, with JSON left as text, which the named query reads.
 */
export function dueListFigure(file: string, db: Database, tubes: number): Figure {
  const { sql, params } = asked(file);
  const raw = db.sqlite.prepare(sql);
  const on = asking(db);
  const found = { ours: 0, floor: 0 };
  const times = byTurns(
    TURNS,
    () => {
      found.ours = dueSteps(db, on).length;
    },
    () => {
      found.floor = raw.all(...params).length;
    },
  );
  if (found.ours !== ROWS || found.floor !== ROWS) throw new Error(`${ROWS} rows were asked for`);
  return {
    what: `due list, ${ROWS} rows of ${tubes.toLocaleString("en-US")} tubes in place`,
    value: median(times.ours) * 1000,
    unit: "us",
    floor: { is: "the same SQL through the driver alone", value: median(times.floor) * 1000 },
    aim: { kind: "at most, of the floor", times: 1.3 },
  };
}
