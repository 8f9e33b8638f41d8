import type { ClinicCalendar } from "#shared/day/clinic-days.ts";
import { day } from "#shared/day/day.ts";
import { zone } from "#shared/day/instant.ts";
import { exampleProtocol } from "#shared/protocol/example.ts";
import type { Books } from "#shared/step/open-steps.ts";
import type { Command, Now } from "#shared/tube/decide.ts";
import type { Pins, TubeEvent } from "#shared/tube/event.ts";
import { type Entry, PINS } from "#tests/support/factories.ts";

/** Entries as a patient's stream, in the order of recording. An entry without an id gets "e1", "e2" ... by its place. */
export const history = (...entries: readonly Entry[]): TubeEvent[] =>
  entries.map((entry, index) => ({ ...entry, id: entry.id ?? `e${index + 1}`, seq: index + 1 }) as TubeEvent);

/** An entry as somebody asks to have it recorded, on a form that had seen `lastSeen`. */
export function command(entry: Entry, lastSeen = Number.MAX_SAFE_INTEGER): Command {
  const { id = "asked", kind, tubes, when: happened, time, daySequence, payload, amends } = entry;
  return { eventId: id, kind, tubes, when: happened, time, daySequence, payload, amends, lastSeen };
}

/** Noon at the clinic. */
export const now = (today: string, pins: Pins | null = PINS): Now => ({
  today: day(today),
  time: "12:00",
  pins,
});

/** Monday to Friday, closed over "2026-11-02..2026-11-15" when so told. */
export const calendar = (...closures: readonly string[]): ClinicCalendar => ({
  version: 1,
  openWeekdays: [1, 2, 3, 4, 5],
  closures: closures.map((span) => {
    const [from = "", to = from] = span.split("..");
    return { from: day(from), to: day(to), reason: "closed" };
  }),
});

/** The example table and a calendar, for every version; an adult. `bornOn: null` is a birth date that nobody knows. */
export const books = (of: Partial<Books> & { readonly closed?: readonly string[] } = {}): Books => ({
  protocol: of.protocol ?? (() => exampleProtocol),
  calendar: of.calendar ?? (() => calendar(...(of.closed ?? []))),
  bornOn: of.bornOn === undefined ? day("1960-01-01") : of.bornOn,
  zone: of.zone ?? zone("UTC"),
  reach: of.reach ?? { livesIn: null, bestTimes: [] },
  readings: of.readings ?? (() => []),
});
