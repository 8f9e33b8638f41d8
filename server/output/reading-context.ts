import type { Database } from "#db/sqlite.ts";
import { loggedTube } from "#server/output/logged-tube.ts";
import { formContext } from "#server/record/form-context.ts";
import type { Instant } from "#shared/day/instant.ts";
import type { ReadingEntry } from "#shared/output/reading-log.ts";
import type { FormContext } from "#shared/record/form.ts";
import { readingBeside } from "#shared/record/output/reading-beside.ts";

type OfTube = { readonly patientId: string; readonly tubeId: string; readonly corrects?: string };

/** What a reading is read beside, and the log that this was made of. */
export type ReadingContext = { readonly context: FormContext; readonly entries: readonly ReadingEntry[] };

/** What a reading of this tube is read beside, at that instant: as a page has it, without the reading that it corrects. */
export function readingContext(
  db: Database,
  at: Instant,
  { patientId, tubeId, corrects }: OfTube,
): ReadingContext {
  const context = formContext(db, at, { patientId, tubeId });
  const { tube, zone, protocol, entries, ...log } = loggedTube(db, tubeId);
  const readings = log.readings.filter(({ id }) => id !== corrects);
  const measured = { readings, zone, row: protocol.output, now: at };
  const plausible = protocol.outputRows?.plausibility ?? null;
  return { context: { ...context, output: readingBeside(tube, measured, plausible) }, entries };
}
