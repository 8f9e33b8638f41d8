import { readFileSync, statSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { recordTableNames } from "#db/record-tables.ts";
import { snapshotOf } from "#db/snapshot.ts";
import type { Database } from "#db/sqlite.ts";
import { importRecordFile } from "#server/export/import-record-file.ts";
import { appendPieces } from "#server/export/write-export.ts";
import { copiedMs } from "#tests/bench/copied-rows.ts";
import type { Figure } from "#tests/bench/figure.ts";
import { msOf } from "#tests/bench/sample.ts";

/** Our choice, no source: each row is made into JSON, or out of it and checked; an import besides computes every step. */
const EXPORT_TIMES = 10;
const IMPORT_TIMES = 12;

/** The same rows read through the driver alone, and the same bytes written. */
function readAndWrittenMs({ sqlite }: Database, bytes: Buffer, file: string): number {
  return msOf(() => {
    for (const table of recordTableNames)
      for (const row of sqlite.prepare(`select * from "${table}"`).raw().iterate()) void row;
    writeFileSync(file, bytes);
  });
}

/** The whole record written to a file, and brought into a new database from there. */
export function recordFileFigures(database: string, tubes: number): readonly Figure[] {
  const folder = dirname(database);
  const file = join(folder, "record.json");
  const db = snapshotOf(database);
  const exported = msOf(() => appendPieces(db, "record.json", file));
  const written = readAndWrittenMs(db, readFileSync(file), `${file}.copy`);
  db.sqlite.close();
  const brought = msOf(() => void importRecordFile({ database: join(folder, "brought.sqlite"), file }));
  const of = `${tubes.toLocaleString("en-US")} tubes, ${Math.round(statSync(file).size / 2 ** 20)} MB`;
  return [
    {
      what: `export of the whole record, ${of}`,
      value: exported,
      unit: "ms",
      floor: { is: "the same rows read by the driver alone and the same bytes written", value: written },
      aim: { kind: "at most, of the floor", times: EXPORT_TIMES },
    },
    {
      what: "import of it, with every tube and step computed",
      value: brought,
      unit: "ms",
      floor: {
        is: "the same rows copied by the driver alone",
        value: copiedMs(database, join(folder, "copied.sqlite")),
      },
      aim: { kind: "at most, of the floor", times: IMPORT_TIMES },
    },
  ];
}
