import { clinicOf, setClockOffset } from "#db/queries/clinic.ts";
import type { Database } from "#db/sqlite.ts";
import { inTransaction, type Tx } from "#db/transaction.ts";
import { bookAhead } from "#seed-demo/book-ahead.ts";
import type { Known } from "#seed-demo/known.ts";
import type { Draw } from "#seed-demo/seeded.ts";
import type { Act, Story } from "#seed-demo/story.ts";
import { tellAct } from "#seed-demo/tell-act.ts";
import { workTheList } from "#seed-demo/work-the-list.ts";
import { machineNow, now } from "#server/clock.ts";
import { viewProtocol } from "#server/protocol/view-protocol.ts";
import { isOpen } from "#shared/day/clinic-days.ts";
import { addDays, type Day } from "#shared/day/day.ts";
import { type Instant, instantAt } from "#shared/day/instant.ts";

/** Whoever tells the stories: the clinic's database, a demo's, and the day on which the demo begins. */
export type Teller = {
  readonly db: Database;
  readonly startDay: Day;
  /** What comes of each call of the list, where somebody works it while the stories are told. */
  readonly calls?: Draw;
};

type Told = { readonly story: Story; readonly act: Act; readonly instant: Instant };

export function instantOf({ db, startDay }: Teller, { daysAgo, at }: Pick<Act, "daysAgo" | "at">): Instant {
  const read = instantAt(addDays(startDay, -daysAgo), at, clinicOf(db).zone);
  if (!read.ok) throw new Error(`no such time: ${daysAgo} days ago ${at}`);
  return read.value;
}

/** Every act that lies behind, in the order of time; at one instant, in that of the stories. */
function inTime(teller: Teller, stories: readonly Story[]): Told[] {
  const began = now(teller.db);
  const acts = stories.flatMap((story) =>
    story.acts.map((act) => ({ story, act, instant: instantOf(teller, act) })),
  );
  return acts.filter(({ instant }) => instant <= began).toSorted((a, b) => a.instant - b.instant);
}

/** Moves the demo's clock, so that each act is recorded at the instant at which it happened. */
export const setClock = (tx: Tx, to: Instant): void => setClockOffset(tx, to - machineNow());

/** So many days before the start day the clinic began to work its call list. */
const LIST_WORKED_DAYS = 60;
const AT_THE_DESK = "16:40";

type Working = { readonly tx: Tx; readonly teller: Teller; readonly known: Known };

/** The call list of each open day from one act to the next, but for the start day, which is the reader's. */
function workDays({ tx, teller, known }: Working, from: number, to: number): void {
  const { calls, startDay } = teller;
  if (calls === undefined) return;
  const { calendar } = viewProtocol(tx);
  const ordinary = new Set([...known.patients].filter(([story]) => !story.ownCalls).map(([, id]) => id));
  for (let daysAgo = Math.min(from, LIST_WORKED_DAYS); daysAgo > Math.max(to, 0); daysAgo -= 1) {
    if (!isOpen(addDays(startDay, -daysAgo), calendar)) continue;
    setClock(tx, instantOf(teller, { daysAgo, at: AT_THE_DESK }));
    workTheList(tx, calls, ordinary);
  }
}

/**
 * Tells the stories through the use cases, act by act, and sets the clock right again. What would happen only later today is
 * left out. In one transaction: a clinic is told whole or not at all, and the disk is waited for once.
 */
export function tellStories(teller: Teller, stories: readonly Story[]): void {
  const known: Known = { patients: new Map(), tubes: new Map(), entries: new Map(), visits: new Map() };
  inTransaction(teller.db, (tx) => {
    let told = Number.POSITIVE_INFINITY;
    for (const { story, act, instant } of inTime(teller, stories)) {
      workDays({ tx, teller, known }, told, act.daysAgo);
      told = act.daysAgo;
      setClock(tx, instant);
      tellAct(tx, known, { story, act, instant });
    }
    workDays({ tx, teller, known }, told, 0);
    setClockOffset(tx, 0);
    bookAhead(tx);
  });
}
