import { overlaps } from "#shared/day/calendar-change.ts";
import type { ClinicCalendar, Closure, HalfDay } from "#shared/day/clinic-days.ts";
import type { Day } from "#shared/day/day.ts";
import { DomainError } from "#shared/errors/refusal.ts";
import { closingForm, closureRefusals } from "#shared/record/calendar/closing-form.ts";
import { halfDayForm } from "#shared/record/calendar/half-day-form.ts";
import { weekdaysForm } from "#shared/record/calendar/weekdays-form.ts";
import type { Texts } from "#shared/record/field-spec.ts";
import { entryOf } from "#shared/record/form.ts";

/** One change of the calendar, as it is typed or pressed. A closure is named by its first day, a half day by its day. */
export type CalendarAsked =
  | { readonly kind: "close"; readonly texts: Texts; readonly moves?: Day | undefined }
  | { readonly kind: "open half a day"; readonly texts: Texts; readonly moves?: Day | undefined }
  | { readonly kind: "open weekdays"; readonly texts: Texts }
  | { readonly kind: "take a closure away"; readonly from: Day }
  | { readonly kind: "take a half day away"; readonly on: Day }
  | { readonly kind: "holidays"; readonly days: readonly { readonly on: Day; readonly name: string }[] };

type Beside = { readonly calendar: ClinicCalendar; readonly today: Day };

const gone = (): never => {
  throw new DomainError({ code: "calendar-changed" });
};

/** The closure that begins on a day. Throws `calendar-changed`: the page that named it is old. */
export const closureFrom = ({ closures }: ClinicCalendar, from: Day): Closure =>
  closures.find((closure) => closure.from === from) ?? gone();

export const halfDayOn = ({ halfDays = [] }: ClinicCalendar, on: Day): HalfDay =>
  halfDays.find((half) => half.on === on) ?? gone();

const withoutClosure = ({ closures }: ClinicCalendar, from: Day | undefined): readonly Closure[] =>
  closures.filter((closure) => closure.from !== from);

const withoutHalf = ({ halfDays = [] }: ClinicCalendar, on: Day | undefined): readonly HalfDay[] =>
  halfDays.filter((half) => half.on !== on);

type Of<K extends CalendarAsked["kind"]> = Extract<CalendarAsked, { kind: K }>;

function closed({ texts, moves }: Of<"close">, { calendar, today }: Beside): ClinicCalendar {
  const context = { calendar, today, moves: moves === undefined ? null : closureFrom(calendar, moves) };
  const closure = entryOf(closingForm.read(texts, context));
  return { ...calendar, closures: [...withoutClosure(calendar, moves), closure] };
}

function halfOpened({ texts, moves }: Of<"open half a day">, { calendar, today }: Beside): ClinicCalendar {
  const context = { calendar, today, moves: moves === undefined ? null : halfDayOn(calendar, moves) };
  const half = entryOf(halfDayForm.read(texts, context));
  return { ...calendar, halfDays: [...withoutHalf(calendar, moves), half] };
}

/** Each as a closure of one day. One that stands already stays as the clinic has it. */
function withHolidays({ days }: Of<"holidays">, { calendar, today }: Beside): ClinicCalendar {
  const closures = [...calendar.closures];
  for (const { on, name } of days) {
    const closure = { from: on, to: on, reason: name };
    if (closures.some((stands) => overlaps(stands, closure))) continue;
    const refusals = closureRefusals(closure, { calendar, today, moves: null });
    if (refusals.length > 0) throw new DomainError(refusals);
    closures.push(closure);
  }
  return { ...calendar, closures };
}

/** The calendar as it would be, its version untouched. Throws what to mend, each beside its field. */
export function calendarAsked(asked: CalendarAsked, beside: Beside): ClinicCalendar {
  const { calendar } = beside;
  switch (asked.kind) {
    case "close":
      return closed(asked, beside);
    case "open half a day":
      return halfOpened(asked, beside);
    case "open weekdays":
      return { ...calendar, ...entryOf(weekdaysForm.read(asked.texts, { calendar })) };
    case "take a closure away":
      closureFrom(calendar, asked.from);
      return { ...calendar, closures: withoutClosure(calendar, asked.from) };
    case "take a half day away":
      halfDayOn(calendar, asked.on);
      return { ...calendar, halfDays: withoutHalf(calendar, asked.on) };
    case "holidays":
      return withHolidays(asked, beside);
  }
}
