import { type ChildProcess, spawn } from "node:child_process";
import { once } from "node:events";
import { copyFileSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import Sqlite from "better-sqlite3";
import { root } from "#server/commands/root.mjs";
import { freePort } from "#tests/e2e/support/clinic-server.ts";
import { templateFile } from "#tests/e2e/support/template.ts";
import { expect, test } from "#tests/e2e/support/test.ts";

type Ended = { readonly code: number; readonly stderr: string };

function start(env: Readonly<Record<string, string>>): ChildProcess {
  return spawn(process.execPath, ["server/commands/start.mjs"], {
    cwd: root,
    env: { NODE_ENV: "production", PATH: process.env.PATH, HOME: process.env.HOME, ...env },
    stdio: ["ignore", "pipe", "pipe"],
  });
}

async function ended(child: ChildProcess): Promise<Ended> {
  let stderr = "";
  child.stderr?.setEncoding("utf8").on("data", (text) => {
    stderr += text;
  });
  const [code] = (await once(child, "close")) as [number];
  return { code, stderr: stderr.trim() };
}

let folder = "";

test.beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "dwellbook-start-"));
});

test.afterAll(() => rmSync(folder, { recursive: true }));

test("npm start without a database to serve says how to name one", async () => {
  const { code, stderr } = await ended(start({}));
  expect(code).toBe(1);
  expect(stderr).toBe(
    "Say which database to serve, like DATABASE_FILE=/srv/dwellbook/clinic.sqlite npm start",
  );
});

test("npm start makes no database where there is none", async () => {
  const file = join(folder, "missing.sqlite");
  const { code, stderr } = await ended(start({ DATABASE_FILE: file, PORT: String(await freePort()) }));
  expect(code).toBe(1);
  expect(stderr).toBe(
    `There is no database at ${file}. Check DATABASE_FILE, or make one with: npm run staff -- add`,
  );
});

test("npm start serves no file that is something else", async () => {
  const file = join(folder, "letter.sqlite");
  writeFileSync(file, "Dear colleague, this is a letter and no database.");
  const { code, stderr } = await ended(start({ DATABASE_FILE: file, PORT: String(await freePort()) }));
  expect(code).toBe(1);
  expect(stderr).toBe(`${file} is not a database of Dwellbook. Check DATABASE_FILE.`);
});

test("npm start serves no database of a later version", async () => {
  const file = join(folder, "later.sqlite");
  copyFileSync(templateFile, file);
  const sqlite = new Sqlite(file);
  sqlite.exec("insert into migrations (name) values ('9999_later')");
  sqlite.close();
  const { code, stderr } = await ended(start({ DATABASE_FILE: file, PORT: String(await freePort()) }));
  expect(code).toBe(1);
  expect(stderr).toBe(
    `${file} was made by a later version than this one. Start that version, or put a backup of this version in its place.`,
  );
});

test("npm start on a taken port names the way out", async ({ clinic }) => {
  const port = new URL(clinic.origin).port;
  const { code, stderr } = await ended(start({ DATABASE_FILE: clinic.database, PORT: port }));
  expect(code).toBe(1);
  expect(stderr).toBe(`Port ${port} is taken by another program. Choose another one, like PORT=3001.`);
});

test("npm start takes a port that is a number", async ({ clinic }) => {
  const { code, stderr } = await ended(start({ DATABASE_FILE: clinic.database, PORT: "80a" }));
  expect(code).toBe(1);
  expect(stderr).toBe('PORT is "80a". Give a number from 1 to 65535, like PORT=3001.');
});

test("npm start serves on loopback, and ends with the terminal's stop", async ({ request }) => {
  const file = join(folder, "clinic.sqlite");
  copyFileSync(templateFile, file);
  const port = await freePort();
  const child = start({ DATABASE_FILE: file, PORT: String(port) });
  const end = ended(child);
  const answer = async (): Promise<number> => {
    const health = await request.get(`http://127.0.0.1:${port}/api/health`).catch(() => undefined);
    return health?.status() ?? 0;
  };
  await expect.poll(answer, { timeout: 15_000 }).toBe(200);
  child.kill("SIGTERM");
  expect((await end).code).toBe(0);
});
