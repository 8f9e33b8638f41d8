import { fetchRequestHandler } from "@trpc/server/adapters/fetch";
import { describe, expect, it } from "vitest";
import * as z from "zod";
import { reads } from "#db/schema/reads.ts";
import type { Database } from "#db/sqlite.ts";
import { inTransaction } from "#db/transaction.ts";
import { createContext } from "#server/api/context.ts";
import { appRouter } from "#server/api/router.ts";
import type { recordRead } from "#server/api/subject.ts";
import { createCallerFactory, procedure, router } from "#server/api/trpc.ts";
import { machineNow } from "#server/clock.ts";
import { keepToken } from "#server/sign-in/cookie.ts";
import { openSession } from "#server/sign-in/open-session.ts";
import { instant } from "#shared/day/instant.ts";
import { contextOf } from "#tests/support/caller.ts";
import { people, testDatabase } from "#tests/support/database.ts";

/** The cookie of a browser in which the nurse signed in so long ago. */
function cookieOf(db: Database, agoMs = 0): string {
  const at = instant(machineNow() - agoMs);
  const token = inTransaction(db, (tx) => openSession(tx, { staffId: people.nurse.id, replaces: null }, at));
  return keepToken(token).split(";")[0] ?? "";
}

type Asked = { readonly path: string; readonly body?: unknown; readonly cookie?: string };

/** One request as the browser sends it, through the real handler. */
async function ask(db: Database, { path, body, cookie }: Asked) {
  const request = new Request(`http://127.0.0.1/api/trpc/${path}`, {
    method: "POST",
    headers: { "content-type": "application/json", ...(cookie === undefined ? {} : { cookie }) },
    body: JSON.stringify(body ?? {}),
  });
  const answer = await fetchRequestHandler({
    endpoint: "/api/trpc",
    req: request,
    router: appRouter,
    allowMethodOverride: true,
    createContext: () => createContext(db, request.headers),
  });
  return { status: answer.status, json: await answer.json() };
}

describe("an answer over HTTP", () => {
  it("is given to somebody whose cookie holds a session", async () => {
    using db = testDatabase();
    const { status, json } = await ask(db, { path: "staff.list", cookie: `a=b; ${cookieOf(db)}` });
    expect(status).toBe(200);
    expect(json.result.data.map(({ userName }: { userName: string }) => userName)).toEqual([
      "corin",
      "lorne",
      "petra",
      "tansy",
    ]);
    expect(JSON.stringify(json)).not.toContain("argon2");
  });

  it.each([
    ["no cookie", () => undefined, "not-signed-in"],
    ["a token of nobody", () => "__Host-dwellbook=made-up", "session-ended"],
    ["a session that ended", (db: Database) => cookieOf(db, 1_200_000), "session-ended"],
  ])("with %s is 401 and says so", async (_, cookie, code) => {
    using db = testDatabase();
    const { status, json } = await ask(db, { path: "staff.list", cookie: cookie(db) });
    expect(status).toBe(401);
    expect(json.error.data.refusals).toEqual([{ code }]);
    expect(json.error.data.stack).toBeUndefined();
  });

  it("for an entry that is not understood names the field", async () => {
    using db = testDatabase();
    const body = { form: "reading", subject: "t1", content: { actId: "short", texts: {} } };
    const { status, json } = await ask(db, { path: "draft.save", body, cookie: cookieOf(db) });
    expect(status).toBe(400);
    expect(json.error.data.refusals).toEqual([
      { code: "entry-not-understood", field: "content.actId", args: { field: "content.actId" } },
    ]);
  });

  it("carries a refusal of a schema with what was typed and the limit", async () => {
    using db = testDatabase();
    const texts = { note: "n".repeat(20_001) };
    const body = { form: "reading", subject: "t1", content: { actId: "a".repeat(22), texts } };
    const { json } = await ask(db, { path: "draft.save", body, cookie: cookieOf(db) });
    expect(json.error.data.refusals).toEqual([
      { code: "text-too-long", field: "content.texts.note", args: { text: "n".repeat(60), limit: 20_000 } },
    ]);
  });

  it("carries the refusals of a use case", async () => {
    using db = testDatabase();
    const texts = Object.fromEntries(Array.from({ length: 4 }, (_, n) => [`f${n}`, "x".repeat(20_000)]));
    const body = { form: "reading", subject: "t1", content: { actId: "a".repeat(22), texts } };
    const { status, json } = await ask(db, { path: "draft.save", body, cookie: cookieOf(db) });
    expect(status).toBe(422);
    expect(json.error.data.refusals).toEqual([{ code: "draft-too-long", args: { limit: 65_536 } }]);
  });

  it("for a procedure that does not exist is 404", async () => {
    using db = testDatabase();
    expect((await ask(db, { path: "staff.nothing", cookie: cookieOf(db) })).status).toBe(404);
  });
});

/** Procedures under a path that the access table knows, so that only what they do differs. */
const trial = (made: { readonly list: typeof silent }) =>
  createCallerFactory(router({ staff: router(made) }));
const silent = procedure.query(() => "shown");

describe("a procedure", () => {
  it("that declares no subject is not answered", async () => {
    using db = testDatabase();
    const caller = trial({ list: silent })(contextOf(db, people.nurse));
    await expect(caller.staff.list()).rejects.toThrow("staff.list declares no subject");
  });

  it("that no line of the access table names is refused to everyone", async () => {
    using db = testDatabase();
    const unlisted = router({ odd: procedure.meta({ subject: { kind: "none" } }).query(() => "shown") });
    const caller = createCallerFactory(unlisted)(contextOf(db, people.lead));
    await expect(caller.odd()).rejects.toMatchObject({ code: "FORBIDDEN" });
  });

  const showing = (subject: Parameters<typeof recordRead>[1]) => {
    const input = z.object({ patientId: z.string() });
    return createCallerFactory(
      router({
        staff: router({
          list: procedure
            .meta({ subject })
            .input(input)
            .query(() => "shown"),
        }),
      }),
    );
  };

  it.each([
    [{ kind: "patient", key: "patientId" }, [{ subjectKind: "patient", subjectId: "p1" }]],
    [{ kind: "print", key: "patientId" }, [{ subjectKind: "print", subjectId: "p1" }]],
    [{ kind: "list", name: "due" }, [{ subjectKind: "list", subjectId: "due" }]],
    [{ kind: "export", name: "due" }, [{ subjectKind: "export", subjectId: "due" }]],
    [{ kind: "none" }, []],
  ] as const)("that shows %o writes who saw what", async (subject, written) => {
    using db = testDatabase();
    expect(await showing(subject)(contextOf(db, people.caller)).staff.list({ patientId: "p1" })).toBe(
      "shown",
    );
    const rows = db.orm.select().from(reads).all();
    expect(rows.map(({ subjectKind, subjectId }) => ({ subjectKind, subjectId }))).toEqual(written);
    for (const row of rows) {
      expect(row).toMatchObject({ staffId: people.caller.id, procedure: "staff.list" });
      expect(machineNow() - row.at).toBeLessThan(60_000);
    }
  });

  it("whose input does not hold the subject is not answered", async () => {
    using db = testDatabase();
    const caller = showing({ kind: "tube", key: "tubeId" })(contextOf(db, people.caller));
    await expect(caller.staff.list({ patientId: "p1" })).rejects.toThrow("the input names no tubeId");
  });
});
