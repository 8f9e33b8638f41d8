import type { RefusalCode } from "#shared/errors/codes.ts";
import type { RefusalArgs } from "#shared/errors/refusal.ts";

/** What is to mend in a hospital's list of bookings. */
export const bookingRefusals = {
  "booking-number-unknown": ({ number }) =>
    `Nobody here has the number ${number}. Register the patient, or mend the number.`,
  "booking-person-unknown": ({ name, born }) =>
    `Nobody here is called ${name} and was born on ${born}. Register the patient, or mend the row.`,
  "booking-of-nobody": () =>
    "The row says no record number, and no name with a birth date. Type whose booking it is.",
  "booking-number-of-another": ({ number, here }) =>
    `The number ${number} is here that of ${here}. Mend the number, the name or the birth date.`,
  "booking-several-patients": ({ first, second }) =>
    `Two records can be meant: ${first}; ${second}. Type the record number.`,
  "booking-without-tube": ({ whose }) =>
    `${whose} has no tube on record that is still in care. Record the tube first, or leave the row out.`,
  "booking-twice": ({ rows }) =>
    `The list books this tube again in row ${rows}, for another day, place or act. Leave in the one that holds.`,
  "nothing-to-book": () =>
    "Nothing in this list is to be booked or moved: every row is known already, asked about, or set aside.",
} satisfies Partial<Record<RefusalCode, (args: RefusalArgs) => string>>;
