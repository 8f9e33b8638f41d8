import { printDay } from "#shared/day/print-day.ts";
import type { Payload } from "#shared/tube/payloads.ts";
import type { visitPayloads } from "#shared/tube/visit-payloads.ts";
import type { VisitState } from "#shared/visit/visit.ts";
import { printMinute } from "#shared/words/offers.ts";
import { type Part, sentence, type Tell } from "#shared/words/sentence.ts";

type Slot = Pick<Payload<"visit moved">, "on" | "place" | "urgent">;

/** "Wed 11 Nov 2026, 09:30, 30 min"; of a visit elsewhere, where it is. Rooms have names in the clinic's own list alone. */
export function slotPhrase({ on, place }: Pick<Slot, "on" | "place">): string {
  const at = place.from === null ? null : printMinute(place.from);
  const where = place.kind === "elsewhere" ? `at ${place.where}` : `${place.minutes} min`;
  return [printDay(on), at, where].filter((part) => part !== null).join(", ");
}

const urgently = ({ urgent }: Slot): Part => urgent && "urgent";

/** How a visit stands, as it is told. */
export const visitStateWords = {
  proposed: "proposed, not answered yet",
  booked: "booked",
  confirmed: "confirmed",
  arrived: "arrived",
  done: "done",
  "did not attend": "did not attend",
  cancelled: "cancelled",
} as const satisfies Record<VisitState, string>;

const heads = {
  booked: "Visit booked",
  confirmed: "Visit confirmed",
  arrived: "Arrived for the visit",
  done: "Visit done",
  "did not attend": "Did not attend",
  cancelled: "Visit cancelled",
} as const satisfies Record<Payload<"visit noted">["state"], string>;

/** Visits as the story tells them. */
export const visitSentences: { readonly [K in keyof typeof visitPayloads]: Tell<K> } = {
  "visit booked": ({ tubes, state, note, ...slot }) =>
    sentence(
      `Visit ${state}${slot.place.kind === "elsewhere" ? " elsewhere" : ""}`,
      [
        tubes.map(({ number, act }) => `tube ${number} ${act}`).join(" and "),
        slotPhrase(slot),
        urgently(slot),
      ],
      note,
    ),
  "visit moved": ({ by, reason, ...slot }) =>
    sentence(
      "Visit moved",
      [`to ${slotPhrase(slot)}`, urgently(slot), by !== null && `asked by ${by}`],
      reason,
    ),
  "visit noted": ({ state, by, reason }) => sentence(heads[state], [by !== null && `by ${by}`], reason),
  "visit prepared": ({ thing, state, by, says }) =>
    sentence("Before the visit", [`${thing}: ${state}`, by !== null && `by ${by}`], says),
};
