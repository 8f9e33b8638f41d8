import { type ChildProcess, spawn } from "node:child_process";
import { once } from "node:events";
import { openDatabase } from "#db/connection.ts";
import { inTransaction } from "#db/transaction.ts";
import { machineNow } from "#server/clock.ts";
import { run } from "#server/commands/run.mjs";
import { startServer } from "#server/commands/serve.mjs";
import { keepToken } from "#server/sign-in/cookie.ts";
import { openSession } from "#server/sign-in/open-session.ts";
import { freePort } from "#tests/e2e/support/clinic-server.ts";
import { people } from "#tests/support/database.ts";

const host = "127.0.0.1";
const TRY_MS = 5;
const LIMIT_MS = 30_000;

/** A server in a process of its own, and how long it took from its start to its first good answer. Ends with its `await using`. */
export type Served = AsyncDisposable & {
  readonly origin: string;
  readonly startMs: number;
  /** Megabytes that its process holds. */
  readonly memory: () => Promise<number>;
};

async function untilItAnswers(child: ChildProcess, health: string): Promise<void> {
  const until = performance.now() + LIMIT_MS;
  while (performance.now() < until && child.exitCode === null) {
    const answer = await fetch(health).catch(() => undefined);
    await answer?.arrayBuffer();
    if (answer?.ok) return;
    await new Promise((resolve) => setTimeout(resolve, TRY_MS));
  }
  child.kill();
  throw new Error("the server did not answer");
}

async function served(port: number, start: () => ChildProcess): Promise<Served> {
  const began = performance.now();
  const child = start();
  const origin = `http://${host}:${port}`;
  await untilItAnswers(child, `${origin}/api/health`);
  const startMs = performance.now() - began;
  const memory = async () => Number(await run("ps", ["-o", "rss=", "-p", String(child.pid)])) / 1024;
  const end = async () => {
    const ended = once(child, "exit");
    child.kill("SIGTERM");
    await ended;
  };
  return { origin, startMs, memory, [Symbol.asyncDispose]: end };
}

/** The standalone build on a database, with the pages to measure against. */
export async function serveBuilt(database: string): Promise<Served> {
  process.env.DWELLBOOK_BENCH = "1";
  const port = await freePort();
  return served(port, () => startServer({ host, port, database }, "ignore"));
}

/** A server of the runtime alone, which answers everything with one word. */
export async function serveBare(): Promise<Served> {
  const port = await freePort();
  const script = `require("node:http").createServer((_, answer) => answer.end("up")).listen(${port}, "${host}")`;
  return served(port, () => spawn(process.execPath, ["-e", script], { stdio: "ignore" }));
}

/** The cookie of somebody who has just signed in. */
export function cookieOf(database: string, person: keyof typeof people): string {
  const db = openDatabase(database);
  const opening = { staffId: people[person].id, replaces: null };
  const token = inTransaction(db, (tx) => openSession(tx, opening, machineNow()));
  db.sqlite.close();
  return keepToken(token).split(";")[0] ?? "";
}

/** The text of a page. Throws when the answer is anything but that page. */
export async function pageText(address: string, cookie: string): Promise<string> {
  const answer = await fetch(address, { headers: { cookie }, redirect: "manual" });
  const text = await answer.text();
  if (answer.status !== 200) throw new Error(`${new URL(address).pathname} answered ${answer.status}`);
  return text;
}
