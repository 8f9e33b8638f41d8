import type { Booking, BookingStanding } from "#shared/visit/hospital-list/stand-bookings.ts";
import { visitTime } from "#shared/words/next-visit.ts";

type Worded = Extract<BookingStanding, { readonly booking: Booking }>;

/** "Left nephrostomy, 8 F: exchange, Wed 11 Nov 2026, 09:30, Far Dale General". */
const bookingWords = ({ tubes, act, where, ...slot }: Booking): string =>
  `${tubes.map(({ name }) => name).join(" and ")}: ${act}, ${visitTime(slot)}, ${where}`;

/** What becomes of a row that leaves no doubt, in one sentence. */
export function bookingSentence(standing: Worded): string {
  const { booking } = standing;
  switch (standing.stands) {
    case "books":
      return `Will be booked elsewhere: ${bookingWords(booking)}.`;
    case "known":
      return `Known already, left as it is: ${bookingWords(booking)}.`;
    case "moves": {
      const { on, place } = standing.visit;
      const was = place.kind === "elsewhere" ? `, ${place.where}` : "";
      return `Moves the booking of ${visitTime({ on, from: place.from })}${was}: ${bookingWords(booking)}.`;
    }
  }
}
