import type { RefusalCode } from "#shared/errors/codes.ts";
import type { RefusalArgs } from "#shared/errors/refusal.ts";

/** What is to mend in a visit that is booked, moved or answered. */
export const visitRefusals = {
  "visit-not-booked": () => "This visit is no longer booked. Look at the patient's visits again.",
  "visit-over": () => "This visit is over or cancelled already. Book a new one.",
  "visit-to-come": ({ day }) =>
    `This visit is on ${day}, and has not come yet. Move it first if it takes place sooner, or cancel it.`,
  "visits-none-to-come": () =>
    "No visit is booked from today on, and a calendar file cannot be empty. Book a visit first.",
  "visit-without-tube": () => "Choose at least one tube, and what is done with it.",
  "visit-tube-ended": ({ tube }) =>
    `The record of the ${tube} has ended. Leave it out, or look whether that is right.`,
  "visit-tube-booked": ({ tube, day }) =>
    `The ${tube} has a visit on ${day} already. Move that one, or leave the tube out here.`,
  "visit-in-two-places": () =>
    "This says a room of ours and somewhere else. Leave one of them out: it is in one place.",
  "visit-without-place": () => 'Choose a room, or type under "Booked elsewhere" where it is.',
  "visit-minutes-unknown": () => "No row says how long this takes. Type the minutes.",
  "visit-minutes-not-understood": ({ text }) =>
    `"${text}" is not a number of minutes from 1 to 1440. Type it in digits, like 45.`,
  "prepared-not-understood": ({ text }) =>
    `"${text}" does not say how it stands. Type settled, does not apply, needed or ?, and after a colon what was agreed.`,
  "prepared-without-words": () =>
    'Type after a colon who agreed the plan, like "settled: plan agreed with" and a name.',
  "clock-not-understood": ({ text }) => `"${text}" is not a time of day. Type it like 9:30 or 14:00.`,
  "slot-past": ({ slot }) => `${slot} is past. Type a day and time that are still to come.`,
  "slot-room-unknown": () => "The clinic no longer has this room. Choose another.",
  "slot-shut": ({ slot, because }) => `The clinic is closed on ${slot}: ${because}. Choose another day.`,
  "slot-not-staffed": ({ room, hours }) =>
    `${room} is not staffed for all of that time: ${hours}. Choose another time, or fewer minutes.`,
  "slot-room-cannot": ({ room, lacks }) => `${room} has no ${lacks}. Choose another room.`,
  "slot-taken": ({ room, by }) =>
    `${room} is taken then: ${by}. Choose another time, or move that visit first.`,
  "slot-patient-cannot": ({ when }) =>
    `The patient cannot come on ${when}. Choose another day, or change on which they cannot.`,
  "slot-not-ready": ({ when }) =>
    `What is to be settled first takes until ${when}. Choose a later slot, or say that it is not needed.`,
} satisfies Partial<Record<RefusalCode, (args: RefusalArgs) => string>>;
