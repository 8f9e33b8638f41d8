import { parseArgs } from "node:util";
import { openDatabase } from "#db/connection.ts";
import { migrateFile } from "#db/migrate.ts";
import { clinicIfAny } from "#db/queries/clinic.ts";
import type { Database } from "#db/sqlite.ts";
import { inTransaction } from "#db/transaction.ts";
import { type Opening, openClinic } from "#server/clinic/open-clinic.ts";
import { machineNow } from "#server/clock.ts";
import { ask } from "#server/commands/ask.ts";
import { databaseFile } from "#server/commands/database-file.ts";
import { telling } from "#server/commands/telling.ts";
import { hashPassword } from "#server/sign-in/password.ts";
import { addAccount } from "#server/staff/add-account.ts";
import { listStaff } from "#server/staff/list-staff.ts";
import { accountNamed, setPassword } from "#server/staff/set-password.ts";
import { staffRoles } from "#shared/access/roles.ts";
import { DomainError } from "#shared/errors/refusal.ts";
import { refusalsOfIssues } from "#shared/errors/refusals-of-issues.ts";
import { type Account, accountSchema } from "#shared/record/account.ts";

const usage = `  npm run staff -- add [--user NAME] [--name "FULL NAME"] [--role ${staffRoles.join("|")}] [--approver]
                       [--clinic "CLINIC"] [--zone ZONE]      the last two for a new database
  npm run staff -- password [--user NAME]                        a new password; ends that person's sessions
  npm run staff -- list
What is left out is asked for. A script gives the password as DWELLBOOK_PASSWORD.`;

const flags = {
  user: { type: "string" },
  name: { type: "string" },
  role: { type: "string" },
  approver: { type: "boolean", default: false },
  clinic: { type: "string" },
  zone: { type: "string" },
} as const;

const notUnderstood = (): DomainError => new DomainError({ code: "command-not-understood", args: { usage } });

function read(args: readonly string[]) {
  try {
    return parseArgs({ args: [...args], options: flags, allowPositionals: true });
  } catch {
    throw notUnderstood();
  }
}

type Flags = ReturnType<typeof read>["values"];

async function accountFrom(given: Flags): Promise<Account> {
  const typed = {
    userName: given.user ?? (await ask({ what: "User name (small letters)" })),
    fullName: given.name ?? (await ask({ what: "Full name" })),
    role: given.role ?? (await ask({ what: `Role (${staffRoles.join(", ")})` })),
    isApprover: given.approver,
  };
  const account = accountSchema.safeParse(typed);
  if (!account.success) throw new DomainError(refusalsOfIssues(account.error.issues, typed));
  return account.data;
}

async function password(): Promise<string> {
  const given = process.env.DWELLBOOK_PASSWORD ?? "";
  if (given !== "") return given;
  const typed = await ask({ what: "Password", hidden: true });
  const again = await ask({ what: "Password again", hidden: true });
  if (typed !== again) throw new DomainError({ code: "passwords-differ" });
  return typed;
}

async function openingFrom(db: Database, given: Flags): Promise<Opening | null> {
  if (clinicIfAny(db) !== undefined) return null;
  return {
    name: given.clinic ?? (await ask({ what: "Name of the clinic" })),
    zone: given.zone ?? (await ask({ what: "Time zone of the clinic, like Europe/London" })),
    phone: "",
    isDemo: false,
  };
}

/** Makes an account, and before the first one the database and its clinic. */
async function add(given: Flags): Promise<void> {
  const file = databaseFile();
  const account = await accountFrom(given);
  const passwordHash = await hashPassword(await password());
  migrateFile(file);
  const db = openDatabase(file);
  try {
    const opening = await openingFrom(db, given);
    const at = machineNow();
    inTransaction(db, (tx) => {
      if (opening !== null) openClinic(tx, opening, at);
      addAccount(tx, { ...account, passwordHash }, at);
    });
    console.log(`${account.fullName} can sign in as ${account.userName}.`);
  } finally {
    db.sqlite.close();
  }
}

/** For somebody who forgot theirs, and after a record was brought in, which holds no passwords. */
async function givePassword(given: Flags): Promise<void> {
  const db = openDatabase(databaseFile());
  try {
    const userName = (given.user ?? (await ask({ what: "User name" }))).trim().toLowerCase();
    accountNamed(db, userName);
    const passwordHash = await hashPassword(await password());
    const { fullName } = inTransaction(db, (tx) => setPassword(tx, { userName, passwordHash }));
    console.log(`${fullName} has a new password and signs in as ${userName}.`);
  } finally {
    db.sqlite.close();
  }
}

function list(): void {
  const db = openDatabase(databaseFile());
  for (const { userName, fullName, role, isApprover, isOpen } of listStaff(db)) {
    const marks = [role, isApprover ? "approver" : "", isOpen ? "" : "closed"].filter((mark) => mark !== "");
    console.log(`${userName}\t${fullName}\t${marks.join(", ")}`);
  }
  db.sqlite.close();
}

async function staff(args: readonly string[]): Promise<void> {
  const { positionals, values } = read(args);
  const [command, ...rest] = positionals;
  if (rest.length > 0) throw notUnderstood();
  if (command === "add") await add(values);
  else if (command === "password") await givePassword(values);
  else if (command === "list") list();
  else throw notUnderstood();
}

await telling(() => staff(process.argv.slice(2)));
