import { openDatabase } from "#db/connection.ts";
import { inTransaction } from "#db/transaction.ts";
import { openClinic } from "#server/clinic/open-clinic.ts";
import { machineNow, today } from "#server/clock.ts";
import { hashPassword } from "#server/sign-in/password.ts";
import { addAccount } from "#server/staff/add-account.ts";
import { dayAt, type Zone } from "#shared/day/instant.ts";
import { inventedClinic } from "./invented-clinic.ts";
import { inventedClosures } from "./invented-closures.ts";
import { inventedRooms } from "./invented-rooms.ts";
import { people } from "./people.ts";
import { seeded } from "./seeded.ts";
import { stockShelf } from "./stock-shelf.ts";
import { tellStories } from "./tell.ts";

const zone = "Europe/London" as Zone;
const clinic = { name: "Quillmere Tube Clinic", phone: "555 0100", isDemo: true };

/** Any number would do: it draws the ordinary lives. */
const SEED = 20;

/** Fills a migrated, empty database with the invented clinic. Prints its sign-ins as one JSON object. */
async function fill(file: string): Promise<void> {
  const db = openDatabase(file);
  const accounts = await Promise.all(
    people.map(async ({ password, ...account }) => ({
      ...account,
      passwordHash: await hashPassword(password),
    })),
  );
  const at = machineNow();
  const closures = inventedClosures(dayAt(at, zone));
  inTransaction(db, (tx) => {
    openClinic(tx, { ...clinic, zone, closures, rooms: inventedRooms }, at);
    for (const account of accounts) addAccount(tx, account, at);
  });
  const startDay = today(db);
  stockShelf({ db, startDay });
  tellStories({ db, startDay, calls: seeded(SEED) }, inventedClinic({ startDay, seed: SEED }));
  db.sqlite.close();
  const signIns = people.map(({ role, userName, password }) => ({ role, userName, password }));
  console.log(JSON.stringify({ signIns }));
}

const file = process.argv[2];
if (file === undefined) throw new Error("name the database to fill");
await fill(file);
