import { projectionOf } from "#db/queries/projections.ts";
import type { Tx } from "#db/transaction.ts";
import { staffOf } from "#seed-demo/known.ts";
import { newId } from "#server/ids.ts";
import { dueList } from "#server/lists/due-list.ts";
import { bookVisit } from "#server/visits/book-visit.ts";
import { offerSlots } from "#server/visits/offer-slots.ts";
import { daysBetween } from "#shared/day/day.ts";
import { printDay } from "#shared/day/print-day.ts";
import { printMinute } from "#shared/words/offers.ts";

/** How many visits stand in the clinic's weeks when the demo begins, and for tubes that are due within how many days. */
const MOST = 18;
const WITHIN_DAYS = 40;

/** What the nurse had booked ahead: the best slot for every second tube that comes next. */
export function bookAhead(tx: Tx): void {
  const staff = staffOf(tx, "nurse");
  const { today, lines } = dueList(tx, staff);
  const next = lines
    .filter(({ step, tube }) => step.kind === "exchange" && tube !== null)
    .filter(({ step }) => step.dueOn >= today && daysBetween(today, step.dueOn) <= WITHIN_DAYS)
    .filter((_, n) => n % 2 === 1);
  for (const { patient, tube } of next.slice(0, MOST)) {
    const patientId = patient.id;
    if (projectionOf(tx, patientId).visits.length > 0) continue;
    const asking = { patientId, first: tube?.id };
    const { tubes, offers, rooms, minutes } = offerSlots(tx, asking);
    const [best] = offers;
    if (best === undefined) continue;
    const room = rooms.find(({ id }) => id === best.slot.roomId)?.name ?? "";
    const texts = {
      on: printDay(best.slot.on),
      at: printMinute(best.slot.from),
      room,
      minutes: String(minutes ?? best.slot.minutes),
    };
    bookVisit(
      { db: tx, staff },
      {
        actId: newId(),
        patientId,
        lastSeen: Number.MAX_SAFE_INTEGER,
        tubes: tubes.map(({ tubeId, act }) => ({ tubeId, act })),
        urgent: false,
        texts,
      },
    );
  }
}
