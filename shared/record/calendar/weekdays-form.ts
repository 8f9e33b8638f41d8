import type { ClinicCalendar } from "#shared/day/clinic-days.ts";
import type { Weekday } from "#shared/day/day.ts";
import { printWeekdays, readWeekdays } from "#shared/day/weekdays.ts";
import type { FieldSpec } from "#shared/record/field-spec.ts";
import { form } from "#shared/record/form.ts";

export type WeekdaysContext = { readonly calendar: ClinicCalendar };

const weekdaysField = ({ calendar }: WeekdaysContext): FieldSpec<readonly Weekday[]> => ({
  label: "Open on",
  hint: "mon-fri, mon wed fri",
  initial: printWeekdays(calendar.openWeekdays),
  read: readWeekdays,
  echo: printWeekdays,
});

/** On which days of the week the clinic is open. */
export const weekdaysForm = form({
  fields: (context: WeekdaysContext) => ({ openWeekdays: weekdaysField(context) }),
  entry: ({ openWeekdays }) => ({ openWeekdays }),
});
