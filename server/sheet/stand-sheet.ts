import type { Database } from "#db/sqlite.ts";
import { now, today } from "#server/clock.ts";
import { formContext } from "#server/record/form-context.ts";
import { hereOf } from "#server/sheet/here.ts";
import { type KeptSheet, readingOf, type SheetReading } from "#server/sheet/load-sheet.ts";
import { type Standing, standings } from "#shared/sheet/stand.ts";

/** How far a list has been read, told now and then. */
export type Told = (done: number) => void;

/** Rows between which others are served. */
const AT_ONCE = 100;

const others = (): Promise<void> => new Promise((resolve) => setImmediate(resolve));

export const sheetReading = (db: Database, kept: KeptSheet): SheetReading =>
  readingOf(kept, Number(today(db).slice(0, 4)));

/**
 * How each row of a list would stand now, by what has been answered. Nothing is written. Serves others between rows, since a long list
 * takes seconds. Comes after `sheetReading` found nothing to answer.
 */
export async function standSheet(
  db: Database,
  kept: KeptSheet,
  told: Told = () => {},
): Promise<readonly Standing[]> {
  const { reading } = sheetReading(db, kept);
  const context = formContext(db, now(db), { patientId: null, tubeId: null });
  const found: Standing[] = [];
  for (const standing of standings(kept.sheet.rows, { reading, context, here: hereOf(db) })) {
    found.push(standing);
    if (found.length % AT_ONCE !== 0) continue;
    told(found.length);
    await others();
  }
  return found;
}
