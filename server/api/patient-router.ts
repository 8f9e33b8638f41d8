import * as z from "zod";
import { procedure, router } from "#server/api/trpc.ts";
import { correctPatient } from "#server/patients/correct-patient.ts";
import { findPatient } from "#server/patients/find-patient.ts";
import { otherRecords } from "#server/patients/other-records.ts";
import { recordsMeant } from "#server/patients/records-meant.ts";
import { registerPatient } from "#server/patients/register-patient.ts";
import { viewPatient } from "#server/patients/view-patient.ts";
import { correctingPatientSchema, registeringSchema } from "#shared/record/act.ts";

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
  otherRecords: procedure
    .meta({ subject: { kind: "list", name: "records that may be the same person's" } })
    .input(z.strictObject({ patientId: id, number: z.string().max(60) }))
    .query(({ ctx, input }) => otherRecords(ctx.db, input)),
  recordsMeant: procedure
    .meta({ subject: { kind: "patient", key: "patientId" } })
    .input(z.strictObject({ patientId: id }))
    .query(({ ctx, input }) => recordsMeant(ctx.db, input.patientId)),
  register: procedure
    .meta({ subject: { kind: "none" } })
    .input(registeringSchema)
    .mutation(({ ctx, input }) => registerPatient(ctx, input)),
  correct: procedure
    .meta({ subject: { kind: "none" } })
    .input(correctingPatientSchema)
    .mutation(({ ctx, input }) => correctPatient(ctx, input)),
});
