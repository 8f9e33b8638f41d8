import type { ClinicCalendar } from "#shared/day/clinic-days.ts";
import { type Day, day, type Weekday } from "#shared/day/day.ts";
import type { Asked, Clinic } from "#shared/visit/may-book.ts";
import type { SlotQuestion } from "#shared/visit/offers.ts";
import type { Booking, Minute, Room } from "#shared/visit/room.ts";
import type { JointWindow } from "#shared/visit/window.ts";

/** "09:30" as minutes after midnight. */
export function minute(clock: string): Minute {
  const [hours = "", minutes = ""] = clock.split(":");
  return Number(hours) * 60 + Number(minutes);
}

const week: readonly Weekday[] = [1, 2, 3, 4, 5];

/** One staffed from 8 to 16 on working days, with fluoroscopy and nothing kept free. */
export const room = (said: Partial<Room> = {}): Room => ({
  id: "room-1",
  name: "Room 1",
  can: ["fluoroscopy"],
  hours: week.map((weekday) => ({ weekday, from: minute("08:00"), to: minute("16:00") })),
  reserve: 0,
  ...said,
});

type Booked = Partial<Omit<Booking, "on" | "from">> & { readonly on: string; readonly from: string };

export const booking = ({ on, from, ...said }: Booked): Booking => ({
  id: `${said.roomId ?? "room-1"} ${on} ${from}`,
  roomId: "room-1",
  minutes: 30,
  ...said,
  on: day(on),
  from: minute(from),
});

export const openWeeks: ClinicCalendar = { version: 1, openWeekdays: week, closures: [] };

export const visitWindow = (earliest: string | null, target: string | null, latest: string | null) =>
  ({
    earliest: earliest as Day | null,
    target: target as Day | null,
    latest: latest as Day | null,
    latestOf: null,
    early: [],
  }) satisfies JointWindow;

type Question = Partial<Omit<SlotQuestion, "clinic" | "asked">> & {
  readonly clinic?: Partial<Clinic>;
  readonly asked?: Partial<Asked>;
};

/** Half an hour with fluoroscopy, asked on Monday 2 November 2026 at 7. */
export const slotQuestion = ({ clinic, asked, ...said }: Question = {}): SlotQuestion => ({
  window: visitWindow("2026-11-09", "2026-11-11", "2026-11-20"),
  urgent: false,
  days: 40,
  ...said,
  clinic: {
    calendar: openWeeks,
    rooms: [room()],
    booked: [],
    now: { on: day("2026-11-02"), at: minute("07:00") },
    ...clinic,
  },
  asked: { minutes: 30, needs: ["fluoroscopy"], notOn: [], readyFrom: null, ...asked },
});
