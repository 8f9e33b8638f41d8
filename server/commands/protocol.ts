import { parseArgs } from "node:util";
import { openDatabase } from "#db/connection.ts";
import { ask } from "#server/commands/ask.ts";
import { databaseFile } from "#server/commands/database-file.ts";
import { telling } from "#server/commands/telling.ts";
import { approveProtocol, approverNamed, protocolToApprove } from "#server/protocol/approve-protocol.ts";
import { printDay } from "#shared/day/print-day.ts";
import { DomainError } from "#shared/errors/refusal.ts";
import type { Protocol } from "#shared/protocol/protocol.ts";

const usage = `  npm run protocol -- approve --by USER-NAME [--name "FULL NAME"]
Name and password are asked for. A script gives the password as DWELLBOOK_PASSWORD.`;

const notUnderstood = (): DomainError => new DomainError({ code: "command-not-understood", args: { usage } });

function read(args: readonly string[]): { readonly by: string; readonly name: string | undefined } {
  try {
    const { positionals, values } = parseArgs({
      args: [...args],
      options: { by: { type: "string" }, name: { type: "string" } },
      allowPositionals: true,
    });
    if (positionals.join(" ") !== "approve" || values.by === undefined) throw notUnderstood();
    return { by: values.by.trim().toLowerCase(), name: values.name };
  } catch {
    throw notUnderstood();
  }
}

const what = ({ version, intervals, tubeOut, redFlags, flush }: Protocol): string =>
  `Version ${version} has ${intervals.length} rows of intervals, ${flush.length} of flushing, ${tubeOut.length} of what is done when a tube is out, ` +
  `${redFlags.length} red flags, and the rows of output, calls, balloon and planning. Read them on the page Protocol first.`;

async function password(): Promise<string> {
  const given = process.env.DWELLBOOK_PASSWORD ?? "";
  return given === "" ? ask({ what: "Your password", hidden: true }) : given;
}

/** `npm run protocol -- approve --by USER-NAME`: the clinic's table gets an approver and a date, and EXAMPLE goes. */
async function approve(args: readonly string[]): Promise<void> {
  const { by: userName, name } = read(args);
  const db = openDatabase(databaseFile());
  try {
    const protocol = protocolToApprove(db);
    approverNamed(db, userName);
    console.log(what(protocol));
    const fullName =
      name ?? (await ask({ what: "To approve them, type your full name as it stands in the account" }));
    const approving = { userName, fullName, password: await password(), version: protocol.version };
    const { version, by, on } = await approveProtocol(db, approving);
    console.log(`Version ${version} is approved by ${by} on ${printDay(on)}.`);
    console.log(
      "Clocks that start from now on go by it. Dates that stand keep the version that they came from.",
    );
  } finally {
    db.sqlite.close();
  }
}

await telling(() => approve(process.argv.slice(2)));
