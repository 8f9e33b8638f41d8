import { reachedAnyTime } from "#shared/call/reach.ts";
import type { CaseRecord } from "#shared/case/case-schema.ts";
import { readingsIn, type ToldRecord, tellRecord } from "#shared/case/tell-record.ts";
import { dayOf, momentOf, type Telling, told } from "#shared/case/telling.ts";
import type { ClinicCalendar } from "#shared/day/clinic-days.ts";
import type { Day } from "#shared/day/day.ts";
import type { Instant } from "#shared/day/instant.ts";
import type { Protocol } from "#shared/protocol/protocol.ts";
import { type Books, openSteps } from "#shared/step/open-steps.ts";
import type { OpenStep } from "#shared/step/step.ts";

/** The one version of each table that cases are run with. */
export type CaseBooks = { readonly protocol: Protocol; readonly calendar: ClinicCalendar };

/** A told record as it is looked at: on a day, at an instant, with its open steps. */
export type Looking = ToldRecord & {
  readonly today: Day;
  readonly now: Instant;
  readonly books: Books;
  readonly protocol: Protocol;
  readonly steps: readonly OpenStep[];
};

const calendarOf = ({ calendar }: CaseRecord, books: CaseBooks): ClinicCalendar =>
  calendar === undefined ? books.calendar : { version: books.calendar.version, ...calendar };

/** Tells a case's entries and looks at what they come to. */
export function lookAt(record: CaseRecord, given: CaseBooks): Telling<Looking> {
  const { protocol } = given;
  const calendar = calendarOf(record, given);
  const now = momentOf(record, { on: record.today, at: record.at });
  if (now.kind !== "told") return now;
  const tables = {
    protocol: () => protocol,
    calendar: () => calendar,
    bornOn: record.birth ?? null,
    zone: record.zone,
    reach: reachedAnyTime,
  };
  const telling = tellRecord(record, tables, { protocol: protocol.version, calendar: calendar.version });
  if (telling.kind !== "told") return telling;
  const books = { ...tables, readings: readingsIn(telling.value) };
  const { state } = telling.value;
  return told({
    ...telling.value,
    today: dayOf(record, record.today),
    now: now.value,
    books,
    protocol,
    steps: openSteps(state, books),
  });
}
