/** `npm start`: serves a clinic's own database. */
import { isAbsolute, join } from "node:path";
import { build } from "./build.mjs";
import { install } from "./install.mjs";
import { CommandFailed, runTypeScript } from "./run.mjs";
import { answering, endTogether, portFrom, refuseTakenPort, startServer } from "./serve.mjs";
import { command, step } from "./step.mjs";

/** The database file that DATABASE_FILE names, from the folder in which the command was called. */
function databaseFile() {
  const named = process.env.DATABASE_FILE ?? "";
  if (named === "") {
    throw new CommandFailed(
      "Say which database to serve, like DATABASE_FILE=/srv/dwellbook/clinic.sqlite npm start",
    );
  }
  return isAbsolute(named) ? named : join(process.env.INIT_CWD ?? process.cwd(), named);
}

await command(async () => {
  const database = databaseFile();
  const host = process.env.HOST || "127.0.0.1";
  const port = portFrom(process.env.PORT);
  await refuseTakenPort({ host, port });
  await step("Install what is missing", install);
  await step("Build the screens", build);
  await step("Bring the database up to date", () =>
    runTypeScript("server/commands/migrate.ts", database, "--existing"),
  );
  const server = startServer({ host, port, database }, "inherit");
  endTogether(server);
  await step("Start the server", () => answering({ host, port }, server));
  console.log(`Dwellbook runs at http://${host}:${port}. Stop it with Ctrl+C.`);
});
