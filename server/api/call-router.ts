import * as z from "zod";
import { procedure, router } from "#server/api/trpc.ts";
import { saveCall } from "#server/calls/save-call.ts";
import { viewCall } from "#server/calls/view-call.ts";
import { aboutPatientSchema } from "#shared/record/act.ts";

/** What is recorded changes a patient's stream, which names who did it; nothing is shown. */
const recording = procedure.meta({ subject: { kind: "none" } });

const callQuerySchema = z.strictObject({ patientId: z.string().min(1).max(64) });

export const callRouter = router({
  view: procedure
    .meta({ subject: { kind: "patient", key: "patientId" } })
    .input(callQuerySchema)
    .query(({ ctx, input }) => viewCall(ctx, input)),
  saved: recording.input(aboutPatientSchema).mutation(({ ctx, input }) => saveCall(ctx, input)),
});
