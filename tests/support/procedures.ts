import { type AnyProcedure, callTRPCProcedure } from "@trpc/server";
import type { Database } from "#db/sqlite.ts";
import { appRouter } from "#server/api/router.ts";
import type { ProcedureMeta } from "#server/api/trpc.ts";
import type { Person } from "#shared/access/person.ts";
import { contextOf } from "#tests/support/caller.ts";

export type Walked = {
  readonly path: string;
  readonly type: "query" | "mutation" | "subscription";
  readonly meta: ProcedureMeta | undefined;
};

/** Flat and keyed by path, though its type is nested. */
const byPath = appRouter._def.procedures as unknown as Readonly<Record<string, AnyProcedure>>;

/** Every procedure of the API. */
export const procedures: readonly Walked[] = Object.entries(byPath).map(([path, { _def }]) => ({
  path,
  type: _def.type,
  meta: _def.meta as ProcedureMeta | undefined,
}));

/** Calls one by its path. The error code, or "answered". */
export async function outcomeOf(db: Database, staff: Person | null, { path, type }: Walked): Promise<string> {
  const call = callTRPCProcedure({
    router: appRouter,
    ctx: contextOf(db, staff),
    path,
    type,
    getRawInput: async () => undefined,
    signal: undefined,
    batchIndex: 0,
  });
  return call.then(
    () => "answered",
    (error: { code: string }) => error.code,
  );
}
