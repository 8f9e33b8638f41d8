import {
  type ClinicCalendar,
  type DayHalf,
  dayHalves,
  type HalfDay,
  whyShut,
} from "#shared/day/clinic-days.ts";
import type { Day } from "#shared/day/day.ts";
import { printDay, weekdayNames } from "#shared/day/print-day.ts";
import type { Refusal } from "#shared/errors/refusal.ts";
import { REASON_LIMIT } from "#shared/record/calendar/closing-form.ts";
import { choiceField } from "#shared/record/field/choice-field.ts";
import { comingDayField } from "#shared/record/field/day-field.ts";
import { filledField } from "#shared/record/field/text-field.ts";
import { form } from "#shared/record/form.ts";

/** `moves`: the half day that this one takes the place of. */
export type HalfDayContext = {
  readonly today: Day;
  readonly calendar: ClinicCalendar;
  readonly moves: HalfDay | null;
};

function halfDayRefusals({ on }: HalfDay, { today, calendar, moves }: HalfDayContext): readonly Refusal[] {
  const day = printDay(on);
  if (on < today) return [{ code: "half-day-past", field: "on", args: { day } }];
  const shut = whyShut(on, calendar);
  if (shut?.code === "closure")
    return [{ code: "half-day-closed", field: "on", args: { day, reason: shut.reason } }];
  if (shut?.code === "closed-weekday") {
    const weekday = weekdayNames[shut.weekday - 1] ?? "";
    return [{ code: "half-day-closed-weekday", field: "on", args: { day, weekday } }];
  }
  const other = (calendar.halfDays ?? []).find((half) => half.on === on && half.on !== moves?.on);
  if (other === undefined) return [];
  return [{ code: "half-day-stands", field: "on", args: { day, half: other.open, reason: other.reason } }];
}

const halves: readonly {
  readonly value: DayHalf;
  readonly label: string;
  readonly words: readonly string[];
}[] = [
  { value: dayHalves[0], label: "Morning, until noon", words: ["am", "m", "morn"] },
  { value: dayHalves[1], label: "Afternoon, from noon on", words: ["pm", "a", "aft"] },
];

/** Open the clinic for one half of a day, or move such a half day. */
export const halfDayForm = form<HalfDay, HalfDay, HalfDayContext>({
  fields: ({ today, moves }) => ({
    on: comingDayField(
      {
        label: "On",
        hint: "24 dec, +14",
        initial: moves === null ? "" : printDay(moves.on),
        what: "the day",
      },
      { today },
    ),
    open: choiceField(
      { label: "Open in the", initial: moves?.open ?? "morning", what: "the half that is open" },
      halves,
    ),
    reason: filledField(
      { label: "Why", hint: "audit in the afternoon", initial: moves?.reason ?? "" },
      "why the other half is closed",
      REASON_LIMIT,
    ),
  }),
  check: halfDayRefusals,
  entry: (half) => half,
});
