import { migrate } from "#db/migrate.ts";
import { ensureEventKinds } from "#db/queries/event-kinds.ts";
import { addStaffRow } from "#db/queries/staff.ts";
import { connect, type Database } from "#db/sqlite.ts";
import { knownMigrations } from "#db/standing.ts";
import { inTransaction } from "#db/transaction.ts";
import { tellStories } from "#seed-demo/tell.ts";
import { openClinic } from "#server/clinic/open-clinic.ts";
import { machineNow, today } from "#server/clock.ts";
import { saveDraft } from "#server/drafts/save-draft.ts";
import { newId } from "#server/ids.ts";
import { voidReading } from "#server/output/record-reading.ts";
import { recordAmendment } from "#server/record/record-amendment.ts";
import { recordEvent } from "#server/record/record-event.ts";
import { undoAct } from "#server/record/undo-act.ts";
import { voidEntry } from "#server/record/void-entry.ts";
import { signIn } from "#server/sign-in/sign-in.ts";
import { DomainError } from "#shared/errors/refusal.ts";
import { eventKinds } from "#shared/tube/event-kinds.ts";
import { callerAs } from "#tests/support/caller.ts";
import { PASSWORD, people } from "#tests/support/database.ts";
import { imageStories } from "#tests/support/image-stories.ts";
import { keepImage } from "#tests/support/images.ts";

/**
 * Keeps a small database as this release leaves it, filled through its use cases: `npx tsx tests/support/keep-image.ts`, once, before a
 * migration follows the last one. The file is named after that, and tests/db/images.test.ts upgrades it for ever.
 */

const clinic = { name: "Quillmere Tube Clinic", zone: "Europe/London", phone: "555 0900", isDemo: true };
const doing = (db: Database) => ({ db, staff: people.nurse });
const submit = () => ({ actId: newId(), lastSeen: Number.MAX_SAFE_INTEGER });

function openedClinic(): Database {
  const db = connect(":memory:");
  migrate(db);
  inTransaction(db, (tx) => {
    ensureEventKinds(tx, eventKinds);
    openClinic(tx, clinic, machineNow());
    for (const person of Object.values(people)) addStaffRow(tx, person);
  });
  return db;
}

const one = (db: Database, sql: string): string => {
  const found = db.sqlite.prepare<[], string>(sql).pluck().get();
  if (found === undefined) throw new Error(`nothing to keep: ${sql}`);
  return found;
};

/** An entry voided, another corrected, a reading voided, an act undone: all stay beside what they amend. */
function amend(db: Database): void {
  const patientId = one(db, "select patient_id from events where kind = 'checked'");
  const eventId = one(db, "select id from events where kind = 'checked'");
  voidEntry(doing(db), { ...submit(), patientId, eventId, texts: { reason: "Typed for another tube." } });

  const exchange = one(db, "select id from events where kind = 'exchanged'");
  const texts = { amendedBecause: "The package says 10.2 F.", when: "-72", size: "10.2 f", takes: ".038 in" };
  recordAmendment(doing(db), { ...submit(), patientId, eventId: exchange, texts });

  const readingId = one(db, "select id from readings order by to_at desc");
  const emptied = one(db, "select patient_id from readings order by to_at desc");
  const reason = { reason: "Another patient's bag." };
  voidReading(doing(db), { ...submit(), patientId: emptied, readingId, texts: reason });

  const tubeId = one(db, "select id from tubes where kind = 'abscess drain'");
  const capped = recordEvent(doing(db), "capped", { ...submit(), patientId: emptied, tubeId, texts: {} });
  undoAct({ db, staff: people.nurse }, { actId: newId(), undoes: capped.actId });
}

/** What is no record: who looked, what was typed and not saved, who is signed in and who was refused. */
async function use(db: Database): Promise<void> {
  const patientId = one(db, "select id from patients order by family_name");
  await callerAs(db, people.caller).patient.view({ patientId });
  await callerAs(db, people.lead).list.today();
  const content = {
    actId: newId(),
    texts: { size: "10 f", note: "Not saved yet: \"half\" a bag,\nand 'more'." },
  };
  saveDraft(db, people.nurse, { form: "exchanged", subject: patientId, content });
  const attempt = { userName: people.nurse.userName, address: "127.0.0.1", replaces: null };
  await signIn(db, { ...attempt, password: PASSWORD }, machineNow());
  await signIn(db, { ...attempt, userName: "nobody", password: "wrong" }, machineNow()).catch(refused);
}

function refused(error: unknown): void {
  if (!(error instanceof DomainError)) throw error;
}

const db = openedClinic();
tellStories({ db, startDay: today(db) }, imageStories);
amend(db);
await use(db);
const name = knownMigrations.at(-1);
if (name === undefined) throw new Error("no migration to name the image after");
console.log(`Kept: ${keepImage(name, db.sqlite)}`);
db.sqlite.close();
