import { initTRPC, TRPCError } from "@trpc/server";
import type { Context } from "#server/api/context.ts";
import { refusalsOf } from "#server/api/refusals-of.ts";
import { recordRead, type Subject } from "#server/api/subject.ts";
import { isProcedure, may } from "#shared/access/may.ts";
import type { RefusalCode } from "#shared/errors/codes.ts";
import { DomainError } from "#shared/errors/refusal.ts";

/** Every procedure says what it shows: `.meta({ subject: ... })`. */
export type ProcedureMeta = { readonly subject: Subject };

const t = initTRPC
  .context<Context>()
  .meta<ProcedureMeta>()
  .create({
    // Where an error was thrown is for the log, never for the browser.
    isDev: false,
    errorFormatter: ({ shape, error, input }) => ({
      ...shape,
      message: error.code === "INTERNAL_SERVER_ERROR" ? "Something went wrong here." : shape.message,
      data: { ...shape.data, refusals: refusalsOf(error, input) },
    }),
  });

export const router = t.router;
export const createCallerFactory = t.createCallerFactory;

/** The status of an answer that carries refusals. */
function statusOf(codes: readonly RefusalCode[]): TRPCError["code"] {
  if (codes.includes("not-signed-in") || codes.includes("session-ended")) return "UNAUTHORIZED";
  if (codes.includes("not-allowed")) return "FORBIDDEN";
  if (codes.includes("act-already-used") || codes.includes("changed-meanwhile")) return "CONFLICT";
  return "UNPROCESSABLE_CONTENT";
}

const refusing = t.middleware(async ({ next }) => {
  const result = await next();
  if (result.ok || !(result.error.cause instanceof DomainError)) return result;
  const { cause } = result.error;
  throw new TRPCError({
    code: statusOf(cause.refusals.map(({ code }) => code)),
    message: cause.message,
    cause,
  });
});

/** Nobody gets past here who is not signed in, or whose role does not stand in the procedure's line of the access table. */
const allowing = t.middleware(({ ctx, path, next }) => {
  const { staff, session, sentToken } = ctx;
  if (staff === null || session === null) {
    throw new DomainError({ code: sentToken ? "session-ended" : "not-signed-in" });
  }
  if (!isProcedure(path) || !may(staff, path)) throw new DomainError({ code: "not-allowed" });
  return next({ ctx: { ...ctx, staff, session } });
});

/** A query is answered when it is written down who saw what; a procedure that does not say what it shows is not answered. */
const auditing = t.middleware(async ({ ctx, path, type, meta, getRawInput, next }) => {
  if (meta === undefined) throw new Error(`${path} declares no subject`);
  const result = await next();
  if (result.ok && type === "query" && ctx.staff !== null) {
    recordRead(ctx.db, meta.subject, { staffId: ctx.staff.id, procedure: path, input: await getRawInput() });
  }
  return result;
});

/** The start of every procedure. `ctx.staff` is who asks. */
export const procedure = t.procedure.use(refusing).use(allowing).use(auditing);
