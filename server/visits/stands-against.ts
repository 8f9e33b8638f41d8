import type { Refusal } from "#shared/errors/refusal.ts";
import { allAgainst, type Clinic } from "#shared/visit/may-book.ts";
import { isOpenVisit, type Visit } from "#shared/visit/visit.ts";
import { againstRefusal } from "#shared/words/against.ts";
import type { VisitNames } from "#shared/words/offers.ts";

/** The clinic, whichever visits are asked for, and the names of what stands in its rooms. */
export type Beside = { readonly clinic: Clinic; readonly names: VisitNames };

/** Why a visit that is booked could not be booked there now: a closure, a change of the room, another visit. */
export function standsAgainst(visit: Visit, { clinic, names }: Beside): Refusal[] {
  if (!isOpenVisit(visit) || visit.place.kind === "elsewhere") return [];
  const { roomId, from, minutes } = visit.place;
  const slot = { roomId, on: visit.on, from, minutes };
  const asked = { minutes, needs: visit.needs, notOn: visit.notOn, readyFrom: null };
  const others = { ...clinic, booked: clinic.booked.filter(({ id }) => id !== visit.id) };
  return allAgainst(slot, asked, others)
    .filter(({ code }) => code !== "past")
    .map((against) => againstRefusal(against, slot, { clinic, names }));
}
