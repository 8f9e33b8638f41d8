import { projectionOf } from "#db/queries/projections.ts";
import { addRoomsVersion } from "#db/queries/versions.ts";
import { takenFrom } from "#db/queries/visits.ts";
import type { Database } from "#db/sqlite.ts";
import { inTransaction, type Tx } from "#db/transaction.ts";
import { inventedRooms } from "#seed-demo/invented-rooms.ts";
import { viewCalendar } from "#server/calendar/view-calendar.ts";
import { machineNow, today } from "#server/clock.ts";
import { newId } from "#server/ids.ts";
import { roomsOf } from "#server/rooms/rooms-of.ts";
import { bookVisit } from "#server/visits/book-visit.ts";
import { offerSlots } from "#server/visits/offer-slots.ts";
import { addDays, type Day } from "#shared/day/day.ts";
import { printDay } from "#shared/day/print-day.ts";
import type { Texts } from "#shared/record/field-spec.ts";
import { openSpans } from "#shared/visit/room.ts";
import { printMinute } from "#shared/words/offers.ts";
import type { Figure } from "#tests/bench/figure.ts";
import { byTurns, median, percentile } from "#tests/bench/sample.ts";
import { people } from "#tests/support/database.ts";

const BOOKED = 500;
const MINUTES = 30;
const TURNS = 50;

/** Every half hour that the rooms with fluoroscopy are staffed, from tomorrow on. */
function* halfHours(db: Database): Generator<Texts> {
  const { calendar } = viewCalendar(db);
  for (let away = 1; ; away += 1) {
    const on: Day = addDays(today(db), away);
    for (const room of roomsOf(db).rooms.filter(({ can }) => can.includes("fluoroscopy")))
      for (const { from, to } of openSpans(room, on, calendar))
        for (let at = from; at + MINUTES <= to; at += MINUTES)
          yield { on: printDay(on), at: printMinute(at), room: room.name, minutes: String(MINUTES) };
  }
}

type Whose = { readonly patientId: string; readonly tubeId: string };

const nephrostomies = (db: Database): readonly Whose[] =>
  db.sqlite
    .prepare<[number], Whose>(
      `select patient_id as patientId, min(id) as tubeId from tubes
      where kind = 'nephrostomy' and status = 'in' group by patient_id order by patient_id limit ?`,
    )
    .all(BOOKED + 1);

/** Two of three half hours are taken, so that a slot has to be looked for. Whoever is left has none. */
function book(tx: Tx): Whose {
  addRoomsVersion(tx, { version: 1, content: { rooms: inventedRooms }, createdAt: machineNow() });
  const [asks, ...others] = nephrostomies(tx);
  if (asks === undefined || others.length < BOOKED) throw new Error("the clinic has too few nephrostomies");
  let n = 0;
  for (const texts of halfHours(tx)) {
    n += 1;
    if (n % 3 === 0) continue;
    const whose = others.pop();
    if (whose === undefined) break;
    bookVisit(
      { db: tx, staff: people.nurse },
      {
        actId: newId(),
        patientId: whose.patientId,
        lastSeen: Number.MAX_SAFE_INTEGER,
        tubes: [{ tubeId: whose.tubeId, act: "exchange" }],
        urgent: false,
        texts,
      },
    );
  }
  return asks;
}

/** Three slots with why and why not sooner, with 500 visits booked, against reading what stands beside them. */
export function slotFigures(db: Database): readonly Figure[] {
  const asks = inTransaction(db, book);
  const answer = () => offerSlots(db, { patientId: asks.patientId, first: asks.tubeId });
  if (answer().offers.length !== 3) throw new Error("no three slots are offered");
  const { ours, floor } = byTurns(TURNS, answer, () => {
    takenFrom(db, today(db));
    projectionOf(db, asks.patientId);
  });
  return [median, (values: readonly number[]) => percentile(values, 95)].map(
    (of, n): Figure => ({
      what: `three slots, ${BOOKED} visits booked, ${n === 0 ? "median" : "p95"}`,
      value: of(ours),
      unit: "ms",
      floor: { is: "the booked visits and the patient's rows read", value: of(floor) },
      aim: { kind: "at most", value: 50 },
    }),
  );
}
