import { daysClosed, overlaps } from "#shared/day/calendar-change.ts";
import type { ClinicCalendar, Closure } from "#shared/day/clinic-days.ts";
import type { Day } from "#shared/day/day.ts";
import { printDay } from "#shared/day/print-day.ts";
import type { Refusal } from "#shared/errors/refusal.ts";
import { comingDayField } from "#shared/record/field/day-field.ts";
import { orBlank } from "#shared/record/field/or-blank.ts";
import { filledField } from "#shared/record/field/text-field.ts";
import { form } from "#shared/record/form.ts";
import { spanWords } from "#shared/words/calendar.ts";

/** Days of the longest closure: a year, and the day more of a leap year. A clinic shut for longer needs a person, not a date. */
export const LONGEST_CLOSURE = 366;
/** Characters of a reason. */
export const REASON_LIMIT = 200;

/** Beside which calendar a closure is read; `moves` is the one that it takes the place of. */
export type ClosingContext = {
  readonly today: Day;
  readonly calendar: ClinicCalendar;
  readonly moves: Closure | null;
};

/** Why a closure cannot stand beside the others, or nothing. */
export function closureRefusals(
  closure: Closure,
  { today, calendar, moves }: ClosingContext,
): readonly Refusal[] {
  const { from, to } = closure;
  if (to < from) return [{ code: "closure-ends-before-start", field: "to" }];
  if (to < today) return [{ code: "closure-past", field: "to", args: { day: printDay(to) } }];
  const days = daysClosed(closure);
  if (days > LONGEST_CLOSURE)
    return [{ code: "closure-too-long", field: "to", args: { days, most: LONGEST_CLOSURE } }];
  const other = calendar.closures.find((stands) => stands.from !== moves?.from && overlaps(stands, closure));
  if (other === undefined) return [];
  const args = { span: spanWords(other), reason: other.reason };
  return [{ code: "closure-overlaps", field: "from", args }];
}

type Values = { readonly from: Day; readonly to: Day | null; readonly reason: string };

const asClosure = ({ from, to, reason }: Values): Closure => ({ from, to: to ?? from, reason });

/** Close the clinic for a day or for several, or move a closure that stands. */
export const closingForm = form<Values, Closure, ClosingContext>({
  fields: ({ today, moves }) => {
    const typed = (of: Day | undefined): string => (of === undefined ? "" : printDay(of));
    const last = moves?.from === moves?.to ? undefined : moves?.to;
    return {
      from: comingDayField(
        { label: "From", hint: "21 dec, +14", initial: typed(moves?.from), what: "the first day" },
        { today },
      ),
      to: orBlank(
        comingDayField(
          {
            label: "To, the last closed day",
            hint: "1 jan; blank: that one day",
            initial: typed(last),
            what: "the last day",
          },
          { today },
        ),
      ),
      reason: filledField(
        { label: "Why", hint: "building work, staff day", initial: moves?.reason ?? "" },
        "why the clinic is closed",
        REASON_LIMIT,
      ),
    };
  },
  check: (values, context) => closureRefusals(asClosure(values), context),
  entry: asClosure,
});
