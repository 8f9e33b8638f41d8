/**
 * `npm run bench`: one table of figure, floor and aim. Times belong to the machine and the hour, so a slow one fails nothing; the
 * command fails when a figure could not be measured.
 */
import { mkdirSync, rmSync } from "node:fs";
import { loadavg } from "node:os";
import { join } from "node:path";
import { openDatabase } from "#db/connection.ts";
import { migrateFile } from "#db/migrate.ts";
import { build } from "#server/commands/build.mjs";
import { root } from "#server/commands/root.mjs";
import { step } from "#server/commands/step.mjs";
import { alone } from "#tests/bench/alone.ts";
import { bringListFigures } from "#tests/bench/bring-list.ts";
import { callListFigure } from "#tests/bench/call-list.ts";
import { dueListFigure } from "#tests/bench/due-list.ts";
import { durableReadingFigure } from "#tests/bench/durable-reading.ts";
import { exchangesPageFigures } from "#tests/bench/exchanges-page.ts";
import type { Figure } from "#tests/bench/figure.ts";
import { figureTable } from "#tests/bench/figure-table.ts";
import { fillClinic } from "#tests/bench/fill-clinic.ts";
import { fitFigures } from "#tests/bench/fit.ts";
import { impactFigures } from "#tests/bench/impact.ts";
import { openedCallFigure } from "#tests/bench/opened-call.ts";
import { pageScriptFigures } from "#tests/bench/page-scripts.ts";
import { rebuildFigure } from "#tests/bench/rebuild.ts";
import { recordFileFigures } from "#tests/bench/record-file.ts";
import { reviewScreenFigure } from "#tests/bench/review-screen.ts";
import { savedCallFigure } from "#tests/bench/saved-call.ts";
import { searchFigures } from "#tests/bench/search.ts";
import { slotFigures } from "#tests/bench/slots.ts";
import { startUpFigures } from "#tests/bench/start-up.ts";
import { tubeOutputFigure } from "#tests/bench/tube-output.ts";

/** Beside the sources, not in a temporary folder: that may lie in memory, where nothing is durable. */
const folder = join(root, "tests", ".cache", "bench");

const SMALL = 2000;
const LARGE = 20_000;
const LIST_ROWS = 5000;

function clinic(tubes: number) {
  const file = join(folder, `${tubes}.sqlite`);
  migrateFile(file);
  const db = openDatabase(file);
  return { file, db, events: fillClinic(db, tubes) };
}

const figures: Figure[] = [];
const notRun: string[] = [];

async function measure(what: string, work: () => Figure | readonly Figure[] | Promise<readonly Figure[]>) {
  try {
    await step(what, async () => {
      figures.push(...[await work()].flat());
    });
  } catch (error) {
    notRun.push(what);
    console.error(error);
  }
}

rmSync(folder, { recursive: true, force: true });
mkdirSync(folder, { recursive: true });
await step("Build the screens", build);
const small = await step(`Fill a clinic with ${SMALL} tubes`, async () => clinic(SMALL));
const large = await step(`Fill a clinic with ${LARGE} tubes`, async () => clinic(LARGE));

await measure("Due list", () => [
  dueListFigure(small.file, small.db, SMALL),
  dueListFigure(large.file, large.db, LARGE),
]);
await measure("The call list", () => callListFigure(large.db, LARGE));
await measure("Opening a call", () => openedCallFigure(large.db, LARGE));
await measure("Search", () => searchFigures(large.db));
await measure("Exchanges over HTTP", () => exchangesPageFigures(large.file));
await measure("Start and memory", () => startUpFigures(large.file));
await measure("Scripts of the screens", () => pageScriptFigures(large.file, large.db));
await measure("A durable reading", () => durableReadingFigure(large.file, large.db));
await measure("A call saved", () => savedCallFigure(large.file, large.db));
await measure("A reading with its alarms", () => alone("alarm-reading-alone.ts", large.file));
await measure("The record as a file", () => recordFileFigures(small.file, SMALL));
await measure("A clinic's own list", () => bringListFigures(folder, LIST_ROWS));
await measure("What passes through what", fitFigures);
await measure("What stands behind an output", tubeOutputFigure);
await measure("Whom a changed row touches", () => impactFigures(large.file, large.db));
await measure("Three slots", () => slotFigures(large.db));
await measure("Rebuild", () => rebuildFigure(large.db, large.events));
await measure("The review of a tube", () => reviewScreenFigure(large.file, large.db));

for (const { db } of [small, large]) db.sqlite.close();
rmSync(folder, { recursive: true });

console.log(`\n${figureTable(figures)}\n`);
console.log(
  `Load of the machine at the end: ${loadavg()
    .map((load) => load.toFixed(1))
    .join(" ")}`,
);
for (const what of notRun) console.log(`Not measured: ${what}`);
process.exitCode = notRun.length === 0 ? 0 : 1;
