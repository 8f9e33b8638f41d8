import { join } from "node:path";
import { openDatabase } from "#db/connection.ts";
import { moveClock } from "#server/clinic/move-clock.ts";
import { today } from "#server/clock.ts";
import { databaseFile } from "#server/commands/database-file.ts";
import { root } from "#server/commands/root.mjs";
import { telling } from "#server/commands/telling.ts";
import { printDay } from "#shared/day/print-day.ts";
import { DomainError } from "#shared/errors/refusal.ts";

const usage = `  npm run demo:clock -- +7d     a week on from where the demo's clock stands
  npm run demo:clock -- real    back to the real day
DATABASE_FILE names another demo than the one of npm run demo.`;

function distance(text: string | undefined): number | "real" {
  if (text === "real") return text;
  const days = /^\+(\d{1,4})d$/.exec(text ?? "")?.[1];
  if (days === undefined) throw new DomainError({ code: "command-not-understood", args: { usage } });
  return Number(days);
}

/** `npm run demo:clock -- +7d`: the demo's clinic reaches next week, in a running server too. */
await telling(async () => {
  const by = distance(process.argv[2]);
  const db = openDatabase(process.env.DATABASE_FILE ? databaseFile() : join(root, "data", "demo.sqlite"));
  try {
    moveClock(db, by);
    console.log(`The clinic's day is ${printDay(today(db))}.`);
  } finally {
    db.sqlite.close();
  }
});
