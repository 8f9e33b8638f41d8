import type { Database } from "#db/sqlite.ts";
import { visitNames } from "#server/visits/visit-names.ts";
import type { Day } from "#shared/day/day.ts";
import { printDay } from "#shared/day/print-day.ts";
import { DomainError } from "#shared/errors/refusal.ts";
import { type Asked, allAgainst, type Clinic } from "#shared/visit/may-book.ts";
import type { VisitPlace } from "#shared/visit/visit.ts";
import { againstRefusal } from "#shared/words/against.ts";

type Wanted = { readonly on: Day; readonly place: VisitPlace; readonly asked: Asked };

/** Throws all that stands against a slot, each beside its field. Of one elsewhere only that it is past. */
export function refuseSlot(db: Database, { on, place, asked }: Wanted, clinic: Clinic): void {
  if (place.kind === "elsewhere") {
    const past = on < clinic.now.on || (on === clinic.now.on && (place.from ?? 1440) < clinic.now.at);
    if (past) throw new DomainError({ code: "slot-past", field: "on", args: { slot: printDay(on) } });
    return;
  }
  const slot = { roomId: place.roomId, on, from: place.from, minutes: place.minutes };
  const names = visitNames(db, clinic);
  const refusals = allAgainst(slot, asked, clinic).map((against) =>
    againstRefusal(against, slot, { clinic, names }),
  );
  if (refusals.length > 0) throw new DomainError(refusals);
}
