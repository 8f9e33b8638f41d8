/** `npm run demo`: from a fresh clone to an invented clinic in the browser. */
import { rmSync } from "node:fs";
import { join } from "node:path";
import { build } from "./build.mjs";
import { install } from "./install.mjs";
import { root } from "./root.mjs";
import { runTypeScript } from "./run.mjs";
import { answering, endTogether, portFrom, refuseTakenPort, startServer } from "./serve.mjs";
import { command, step } from "./step.mjs";

const host = "127.0.0.1";
const database = join(root, "data", "demo.sqlite");

/** @typedef {{ signIns: { role: string, userName: string, password: string }[] }} Seeded */

/** The demo begins anew each time: its days lie around today. */
async function makeDatabase() {
  for (const end of ["", "-wal", "-shm"]) rmSync(`${database}${end}`, { force: true });
  return runTypeScript("server/commands/migrate.ts", database);
}

/** @returns {Promise<Seeded>} */
const seed = async () => JSON.parse(await runTypeScript("seed-demo/main.ts", database));

/** @param {Seeded} seeded @param {number} port */
function tell({ signIns }, port) {
  const width = Math.max(...signIns.map(({ role }) => role.length));
  console.log(`
Dwellbook runs at http://${host}:${port}

Sign in as
${signIns.map(({ role, userName, password }) => `  ${role.padEnd(width)}  ${userName}  ${password}`).join("\n")}

Everyone and everything in it is invented. What you enter is gone when the demo starts again.
Stop it with Ctrl+C.`);
}

await command(async () => {
  const port = portFrom(process.env.PORT);
  await refuseTakenPort({ host, port });
  await step("Install what is missing (a few minutes the first time)", install);
  await step("Build the screens", build);
  await step("Make the database", makeDatabase);
  const seeded = await step("Fill in an invented clinic", seed);
  const server = startServer({ host, port, database }, "ignore");
  endTogether(server);
  await step("Start the server", () => answering({ host, port }, server));
  tell(seeded, port);
});
