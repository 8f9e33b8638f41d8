import { clinicOf } from "#db/queries/clinic.ts";
import { logOfTube } from "#db/queries/readings.ts";
import type { Database } from "#db/sqlite.ts";
import { now, today } from "#server/clock.ts";
import { standingOf } from "#server/output/standing-readings.ts";
import { loadTube } from "#server/tubes/load-tube.ts";
import { voidedByDay } from "#shared/clinical/voided-by-day.ts";
import { addDays } from "#shared/day/day.ts";
import { outputOfTube } from "#shared/output/output-of-tube.ts";
import { drainsUrine, type UrineDay, urineByRoute } from "#shared/output/together/urine-by-route.ts";
import { titlesOf } from "#shared/tube/name.ts";
import type { TubeState } from "#shared/tube/state.ts";

/** Days that a person looks over. */
const DAYS = 14;

/** `routes`: the ways of urine beside voiding, in the order in which they are read, left before right. */
export type UrineView = {
  readonly routes: readonly { readonly tubeId: string; readonly title: string }[];
  readonly days: readonly UrineDay[];
};

/** Urine of this tube's patient by every tube and voided, day by day; null of a tube that drains none. Throws `tube-unknown`. */
export function viewUrine(db: Database, tubeId: string): UrineView | null {
  const { record, state, tube } = loadTube(db, tubeId);
  if (!drainsUrine(tube)) return null;
  const since = addDays(today(db), -DAYS);
  const isOver = ({ ending }: TubeState): boolean => (ending?.when.latest ?? since) < since;
  const titles = titlesOf(state.tubes);
  const routes = state.tubes
    .filter((one) => drainsUrine(one) && !isOver(one))
    .map((one) => ({ one, title: titles.get(one.id) ?? "" }))
    .toSorted((a, b) => (a.title < b.title ? -1 : 1));
  const asked = { zone: clinicOf(db).zone, now: now(db) };
  const tubes = routes.map(({ one }) => {
    const row = record.books.protocol(one.pins.protocol).output;
    const readings = standingOf(logOfTube(db, one.id));
    return { tube: one, days: outputOfTube(one, { ...asked, readings, row }).days };
  });
  return {
    routes: routes.map(({ one, title }) => ({ tubeId: one.id, title })),
    days: urineByRoute({ ...asked, tubes, voided: voidedByDay(record.events) }, DAYS),
  };
}
