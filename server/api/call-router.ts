import * as z from "zod";
import { procedure, router } from "#server/api/trpc.ts";
import { releaseHold, takeHold } from "#server/calls/hold-patient.ts";
import { saveCall } from "#server/calls/save-call.ts";
import { viewCall } from "#server/calls/view-call.ts";
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
  taken: unseen
    .input(z.strictObject({ patientId, over: z.boolean().optional() }))
    .mutation(({ ctx, input }) => takeHold(ctx, input)),
  released: unseen.input(z.strictObject({ patientId })).mutation(({ ctx, input }) => releaseHold(ctx, input)),
});
