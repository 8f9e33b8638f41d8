import { spawn } from "node:child_process";
import { createServer } from "node:net";
import { dirname } from "node:path";
import { builtServer } from "./build.mjs";
import { CommandFailed } from "./run.mjs";

/** @typedef {{ host: string, port: number, database: string }} Place */

/** The port that PORT names. @param {string | undefined} text @returns {number} */
export function portFrom(text) {
  if (text === undefined || text === "") return 3000;
  const port = Number(text);
  if (Number.isInteger(port) && port >= 1 && port <= 65_535) return port;
  throw new CommandFailed(`PORT is "${text}". Give a number from 1 to 65535, like PORT=3001.`);
}

/** Throws CommandFailed with the way out when something else listens there. @param {Omit<Place, "database">} place */
export function refuseTakenPort({ host, port }) {
  const probe = createServer();
  return new Promise((resolve, reject) => {
    probe.once("error", (error) => {
      const taken = "code" in error && error.code === "EADDRINUSE";
      const cause = taken
        ? `Port ${port} is taken by another program`
        : `Port ${port} of ${host} cannot be opened`;
      reject(new CommandFailed(`${cause}. Choose another one, like PORT=${port === 3001 ? 3002 : 3001}.`));
    });
    probe.listen({ host, port }, () => probe.close(resolve));
  });
}

/**
 * What the server is run with. A save reads a tube's whole log and throws most of it away again: with the room that new objects have by
 * themselves the slowest hundredth of saves took 11 to 13 ms, with this 7 to 9. The bench measures a save with the same.
 */
export const serverFlags = ["--max-semi-space-size=32"];

/**
 * Starts the built server. What goes wrong is written to this terminal, its log only where that is wanted.
 * @param {Place} place @param {"inherit" | "ignore"} log
 */
export function startServer({ host, port, database }, log) {
  return spawn(process.execPath, [...serverFlags, builtServer], {
    cwd: dirname(builtServer),
    env: {
      ...process.env,
      NODE_ENV: "production",
      HOSTNAME: host,
      PORT: String(port),
      DATABASE_FILE: database,
    },
    stdio: ["ignore", log, "inherit"],
  });
}

const TRY_MS = 100;
const LIMIT_MS = 30_000;

/** Waits until the server answers. @param {Omit<Place, "database">} place @param {import("node:child_process").ChildProcess} server */
export async function answering({ host, port }, server) {
  const until = Date.now() + LIMIT_MS;
  while (Date.now() < until && server.exitCode === null) {
    const answer = await fetch(`http://${host}:${port}/api/health`).catch(() => undefined);
    if (answer?.ok) return;
    if (answer?.status === 503) return refuse(server, (await answer.json()).sentence);
    await new Promise((resolve) => setTimeout(resolve, TRY_MS));
  }
  return refuse(server, "The server did not start. What it wrote stands above.");
}

/** @param {import("node:child_process").ChildProcess} server @param {string} sentence @returns {never} */
function refuse(server, sentence) {
  server.kill();
  throw new CommandFailed(sentence);
}

/** Passes a stop on to the server, and ends with it: well when the stop was asked for. @param {import("node:child_process").ChildProcess} server */
export function endTogether(server) {
  let asked = false;
  for (const signal of /** @type {const} */ (["SIGINT", "SIGTERM"])) {
    process.on(signal, () => {
      asked = true;
      server.kill(signal);
    });
  }
  server.on("exit", (code) => {
    process.exitCode = asked ? 0 : (code ?? 1);
  });
}
