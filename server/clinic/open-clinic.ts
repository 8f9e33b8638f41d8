import { addClinic, type Clinic } from "#db/queries/clinic.ts";
import { addCalendarVersion, addProtocolVersion, addRoomsVersion } from "#db/queries/versions.ts";
import type { Tx } from "#db/transaction.ts";
import type { ClinicCalendar, Closure } from "#shared/day/clinic-days.ts";
import { type Instant, isZone } from "#shared/day/instant.ts";
import { DomainError } from "#shared/errors/refusal.ts";
import { exampleProtocol } from "#shared/protocol/example.ts";
import type { Room } from "#shared/visit/room.ts";

export type Opening = Pick<Clinic, "name" | "phone" | "isDemo"> & {
  readonly zone: string;
  /** Days on which it is known to be shut; none, where left out. */
  readonly closures?: readonly Closure[];
  /** Rooms that it begins with; where left out, it has none until the lead adds one. */
  readonly rooms?: readonly Room[];
};

/** Until a clinic says otherwise. */
export const openingCalendar: ClinicCalendar = { version: 1, openWeekdays: [1, 2, 3, 4, 5], closures: [] };

/**
 * Makes the one clinic of a new database, with version 1 of its protocol, the EXAMPLE that nobody has approved, and of its
 * calendar, Monday to Friday. Throws `zone-unknown`, `text-missing`.
 */
export function openClinic(tx: Tx, opening: Opening, at: Instant): void {
  const { name, zone, phone, isDemo, closures = [], rooms = [] } = opening;
  if (name.trim() === "") {
    throw new DomainError({
      code: "text-missing",
      field: "clinic",
      args: { what: "the name of the clinic" },
    });
  }
  if (!isZone(zone)) throw new DomainError({ code: "zone-unknown", field: "zone", args: { text: zone } });
  addClinic(tx, { name: name.trim(), zone, phone: phone.trim(), isDemo, clockOffsetMs: 0 });
  const { version, approved: _nobody, ...rows } = exampleProtocol;
  addProtocolVersion(tx, {
    version,
    rows,
    note: "The example that this program brings.",
    approvedBy: null,
    approvedOn: null,
    createdAt: at,
    draftedBy: null,
    approvedAlone: null,
  });
  const { version: first, ...content } = openingCalendar;
  addCalendarVersion(tx, { version: first, content: { ...content, closures }, createdAt: at });
  if (rooms.length > 0) addRoomsVersion(tx, { version: 1, content: { rooms }, createdAt: at });
}
