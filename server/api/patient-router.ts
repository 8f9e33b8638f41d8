import * as z from "zod";
import { procedure, router } from "#server/api/trpc.ts";
import { findPatient } from "#server/patients/find-patient.ts";
import { viewPatient } from "#server/patients/view-patient.ts";

const id = z.string().min(1).max(64);

export const patientRouter = router({
  view: procedure
    .meta({ subject: { kind: "patient", key: "patientId" } })
    .input(z.strictObject({ patientId: id }))
    .query(({ ctx, input }) => viewPatient(ctx.db, input.patientId)),
  find: procedure
    .meta({ subject: { kind: "list", name: "find a patient" } })
    .input(z.strictObject({ typed: z.string().max(200) }))
    .query(({ ctx, input }) => findPatient(ctx.db, input.typed)),
});
