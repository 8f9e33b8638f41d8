import type { RefusalCode } from "#shared/errors/codes.ts";
import type { RefusalArgs } from "#shared/errors/refusal.ts";

/** What is to mend in a change of the clinic's calendar. */
export const calendarRefusals = {
  "closure-ends-before-start": () => "The closure ends before it starts. Check both days.",
  "closure-past": ({ day }) =>
    `This closure ended on ${day}, and what is past touches no date. Type a last day that is still to come.`,
  "closure-too-long": ({ days, most }) =>
    `This is a closure of ${days} days; one closure has at most ${most}. Check the year of both days, or change the open weekdays instead.`,
  "closure-overlaps": ({ span, reason }) =>
    `The clinic is closed ${span} already: ${reason}. Move that closure, or leave its days out of this one.`,
  "half-day-past": ({ day }) => `${day} is past. Type a day that is still to come.`,
  "half-day-closed": ({ day, reason }) =>
    `The clinic is closed on ${day}: ${reason}. Move or take away that closure first, or choose another day.`,
  "half-day-closed-weekday": ({ day, weekday }) =>
    `${day} is a ${weekday}, on which the clinic is not open. Choose an open day, or open the weekday first.`,
  "half-day-stands": ({ day, half, reason }) =>
    `${day} is half a day already, open in the ${half}: ${reason}. Move that one, or choose another day.`,
  "weekdays-none": () => "The clinic is open on at least one day of the week. Type it like mon-fri.",
  "weekdays-not-understood": ({ text }) =>
    `"${text}" is not understood as days of the week. Type them like mon-fri, or mon wed fri.`,
  "calendar-changed": () =>
    "The calendar was changed since you opened it. Open it again, and look at what changed.",
} satisfies Partial<Record<RefusalCode, (args: RefusalArgs) => string>>;
