import { migrate } from "#db/migrate.ts";
import { ensureEventKinds } from "#db/queries/event-kinds.ts";
import { clinic } from "#db/schema/clinic.ts";
import { staff } from "#db/schema/staff.ts";
import { calendarVersions, protocolVersions } from "#db/schema/versions.ts";
import { connect, type Database } from "#db/sqlite.ts";
import { inTransaction } from "#db/transaction.ts";
import { instant, zone } from "#shared/day/instant.ts";
import { eventKinds } from "#shared/tube/event-kinds.ts";

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
} as const satisfies Record<string, typeof staff.$inferSelect>;

let image: Buffer | undefined;

/** The real SQL, run once a file of tests; each test then gets its own copy in memory. */
function migratedImage(): Buffer {
  if (image !== undefined) return image;
  const db = connect(":memory:");
  const { sqlite, orm } = db;
  migrate(db);
  inTransaction(db, (tx) => ensureEventKinds(tx, eventKinds));
  orm
    .insert(clinic)
    .values({ id: 1, name: "Quillmere Tube Clinic", zone: zone("Europe/London"), phone: "", isDemo: false })
    .run();
  orm.insert(staff).values(Object.values(people)).run();
  image = sqlite.serialize();
  sqlite.close();
  return image;
}

export type Pinned = { readonly rows?: unknown; readonly calendar?: unknown };

const weekdaysOnly = { openWeekdays: [1, 2, 3, 4, 5], closures: [] };

/** A clinic with four people and version 1 of protocol and calendar. `using db = testDatabase()` closes it with the test. */
export function testDatabase({ rows = [], calendar = weekdaysOnly }: Pinned = {}): Database & Disposable {
  const db = connect(migratedImage());
  db.orm
    .insert(protocolVersions)
    .values({ version: 1, rows, note: "first rows", createdAt: SEEDED_AT })
    .run();
  db.orm.insert(calendarVersions).values({ version: 1, content: calendar, createdAt: SEEDED_AT }).run();
  return { ...db, [Symbol.dispose]: () => db.sqlite.close() };
}
