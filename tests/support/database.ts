import { migrate } from "#db/migrate.ts";
import { ensureEventKinds } from "#db/queries/event-kinds.ts";
import { addStaffRow, type StaffRow } from "#db/queries/staff.ts";
import { connect, type Database } from "#db/sqlite.ts";
import { inTransaction } from "#db/transaction.ts";
import { openClinic } from "#server/clinic/open-clinic.ts";
import type { Closure } from "#shared/day/clinic-days.ts";
import { instant } from "#shared/day/instant.ts";
import { eventKinds } from "#shared/tube/event-kinds.ts";
import type { Room } from "#shared/visit/room.ts";

/** Everything in a test database was made then. */
export const SEEDED_AT = instant(Date.UTC(2026, 0, 5, 8));

/** What all four sign in with. */
export const PASSWORD = "seven quiet herons";
const PASSWORD_HASH =
  "$argon2id$v=19$m=19456,t=2,p=1$iO/8Z279AsA2AvFU66akrw$aLNUHamfBfYv7zSybPed3xvYyPAFvfDi/WTZjIBbhEQ";

const person = { passwordHash: PASSWORD_HASH, createdAt: SEEDED_AT, closedAt: null, isApprover: false };

/** One of each role, plainly invented; the physician is an approver. */
export const people = {
  nurse: { ...person, id: "staff-nurse", userName: "tansy", fullName: "Tansy Nurseworth", role: "nurse" },
  caller: { ...person, id: "staff-caller", userName: "corin", fullName: "Corin Callwell", role: "caller" },
  physician: {
    ...person,
    id: "staff-physician",
    userName: "petra",
    fullName: "Petra Physick",
    role: "physician",
    isApprover: true,
  },
  lead: { ...person, id: "staff-lead", userName: "lorne", fullName: "Lorne Leadbeater", role: "lead" },
} as const satisfies Record<string, StaffRow>;

type Sort = {
  readonly isDemo: boolean;
  readonly closures?: readonly Closure[];
  readonly rooms?: readonly Room[];
};

let empty: Buffer | undefined;
const images = new Map<boolean, Buffer>();

/** The real SQL, run once a file of tests; each test then gets its own copy in memory. */
function migratedImage(): Buffer {
  if (empty !== undefined) return empty;
  const db = connect(":memory:");
  migrate(db);
  inTransaction(db, (tx) => ensureEventKinds(tx, eventKinds));
  empty = db.sqlite.serialize();
  db.sqlite.close();
  return empty;
}

function clinicImage({ isDemo, closures, rooms }: Sort): Buffer {
  const made = closures === undefined && rooms === undefined ? images.get(isDemo) : undefined;
  if (made !== undefined) return made;
  const db = connect(migratedImage());
  inTransaction(db, (tx) => {
    const clinic = {
      name: "Quillmere Tube Clinic",
      zone: "Europe/London",
      phone: "",
      isDemo,
      closures,
      rooms,
    };
    openClinic(tx, clinic, SEEDED_AT);
    for (const person of Object.values(people)) addStaffRow(tx, person);
  });
  const image = db.sqlite.serialize();
  if (closures === undefined && rooms === undefined) images.set(isDemo, image);
  db.sqlite.close();
  return image;
}

const closing = (db: Database): Database & Disposable => ({
  ...db,
  [Symbol.dispose]: () => db.sqlite.close(),
});

/**
 * A clinic with four people, the example protocol and a calendar of open weekdays and closures, both in version 1.
 * `using db = testDatabase()` closes it with the test. Only a demo's clock can be moved.
 */
export const testDatabase = (sort: Sort = { isDemo: false }): Database & Disposable =>
  closing(connect(clinicImage(sort)));

/** A database as it is before its first account: without a clinic. */
export const emptyDatabase = (): Database & Disposable => closing(connect(migratedImage()));
