import * as z from "zod";
import { procedure, router } from "#server/api/trpc.ts";
import { callList } from "#server/calls/call-list.ts";
import { callPaper } from "#server/calls/call-paper.ts";
import { closingList } from "#server/calls/closing-list.ts";
import { releaseHold, takeHold } from "#server/calls/hold-patient.ts";
import { saveCall } from "#server/calls/save-call.ts";
import { viewCall } from "#server/calls/view-call.ts";
import { callFile } from "#server/export/csv/call-table.ts";
import { aboutPatientSchema } from "#shared/record/act.ts";

const patientId = z.string().min(1).max(80);

/** Who rings whom now: nothing of a patient is shown or changed. What is recorded names who did it. */
const unseen = procedure.meta({ subject: { kind: "none" } });

export const callRouter = router({
  view: procedure
    .meta({ subject: { kind: "patient", key: "patientId" } })
    .input(z.strictObject({ patientId }))
    .query(({ ctx, input }) => viewCall(ctx, input)),
  saved: unseen.input(aboutPatientSchema).mutation(({ ctx, input }) => saveCall(ctx, input)),
  list: procedure
    .meta({ subject: { kind: "list", name: "calls" } })
    .input(z.strictObject({ which: z.enum(["due", "coming"]), page: z.int().min(1).max(1000) }))
    .query(({ ctx, input }) => callList(ctx.db, input)),
  paper: procedure
    .meta({ subject: { kind: "print", name: "calls" } })
    .input(z.strictObject({ share: z.int().min(1).max(20), of: z.int().min(1).max(20) }))
    .query(({ ctx, input }) => callPaper(ctx.db, input)),
  closing: procedure
    .meta({ subject: { kind: "print", name: "the day's closing list" } })
    .query(({ ctx }) => closingList(ctx.db)),
  /** Asked for before a file is sent: whether this person may have it, written down that they took it. */
  file: procedure.meta({ subject: { kind: "export", name: "calls" } }).query(({ ctx }) => callFile(ctx.db)),
  taken: unseen
    .input(z.strictObject({ patientId, over: z.boolean().optional() }))
    .mutation(({ ctx, input }) => takeHold(ctx, input)),
  released: unseen.input(z.strictObject({ patientId })).mutation(({ ctx, input }) => releaseHold(ctx, input)),
});
