import type { RefusalCode } from "#shared/errors/codes.ts";
import type { RefusalArgs } from "#shared/errors/refusal.ts";

/** What is to mend in a change of the clinic's rooms. */
export const roomsRefusals = {
  "hours-missing": () => "Type when the room is staffed, like mon-fri 8-16.",
  "hours-not-understood": ({ text }) =>
    `"${text}" is not understood as hours. Type them by a clock of 24 hours, like mon-fri 8-16:30.`,
  "hours-without-weekday": ({ text }) =>
    `No day of the week stands before ${text}. Type the days first, like mon-fri 8-16.`,
  "weekday-without-hours": ({ weekdays }) =>
    `No hours stand after ${weekdays}. Type them like mon-fri 8-16, or leave those days out.`,
  "hours-end-before-beginning": ({ from, to }) =>
    `${from} to ${to} ends before it begins: a room that works over midnight is written as two, from ${from} to 24:00 and from 00:00 to ${to} on the days after.`,
  "hours-without-length": ({ from }) =>
    `${from} to ${from} is no time at all. Type an end that comes later; the whole day is 0-24.`,
  "hours-overlap": ({ weekday, from, to }) =>
    `On ${weekday} one time ends at ${to} and the next begins at ${from}, before it. Join them, or part them.`,
  "hours-too-many": ({ weekday, most }) =>
    `${weekday} has more than ${most} times of its own. Join some of them.`,
  "minutes-not-understood": ({ text }) =>
    `"${text}" is not understood as a length of time in whole minutes. Type it like 60, or 1 h 30.`,
  "room-name-taken": ({ name }) =>
    `Another room is called ${name} already. Type another name, or change that room.`,
  "reserve-over-day": ({ reserve, weekday, minutes }) =>
    `${reserve} minutes are more than the room has on ${weekday}, its shortest day: ${minutes}. Type ${minutes} or less, or longer hours.`,
  "rooms-changed": () =>
    "The rooms were changed since you opened them. Open them again, and look at what changed.",
} satisfies Partial<Record<RefusalCode, (args: RefusalArgs) => string>>;
