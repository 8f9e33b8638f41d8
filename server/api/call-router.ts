import * as z from "zod";
import { procedure, router } from "#server/api/trpc.ts";
import { releaseHold, takeHold } from "#server/calls/hold-patient.ts";

const patientId = z.string().min(1).max(80);

/** Who rings whom now: nothing of a patient is shown or changed. */
const holding = procedure.meta({ subject: { kind: "none" } });

export const callRouter = router({
  taken: holding
    .input(z.strictObject({ patientId, over: z.boolean().optional() }))
    .mutation(({ ctx, input }) => takeHold(ctx, input)),
  released: holding
    .input(z.strictObject({ patientId }))
    .mutation(({ ctx, input }) => releaseHold(ctx, input)),
});
