import { procedure, router } from "#server/api/trpc.ts";
import { closeFlag, handFlag, raiseFlag } from "#server/calls/flag-act.ts";
import { recordTubeOut } from "#server/calls/tube-out-act.ts";
import { listUnhanded } from "#server/calls/unhanded-flags.ts";
import { viewFlag } from "#server/calls/view-flag.ts";
import { viewRaising } from "#server/calls/view-raising.ts";
import { viewTubeOut } from "#server/calls/view-tube-out.ts";
import { aboutPatientSchema } from "#shared/record/act.ts";
import { aboutFlagSchema, flagQuerySchema, ofPatientQuerySchema } from "#shared/record/call/asked-schema.ts";

/** What is recorded changes a patient's stream, which names who did it; nothing is shown. */
const recording = procedure.meta({ subject: { kind: "none" } });
const ofPatient = procedure.meta({ subject: { kind: "patient", key: "patientId" } });

export const flagRouter = router({
  view: ofPatient.input(flagQuerySchema).query(({ ctx, input }) => viewFlag(ctx.db, input)),
  raising: ofPatient.input(ofPatientQuerySchema).query(({ ctx, input }) => viewRaising(ctx.db, input)),
  tubeOut: ofPatient.input(ofPatientQuerySchema).query(({ ctx, input }) => viewTubeOut(ctx.db, input)),
  unhanded: procedure
    .meta({ subject: { kind: "list", name: "red flags handed to nobody" } })
    .query(({ ctx }) => listUnhanded(ctx.db)),
  raised: recording.input(aboutPatientSchema).mutation(({ ctx, input }) => raiseFlag(ctx, input)),
  handed: recording.input(aboutFlagSchema).mutation(({ ctx, input }) => handFlag(ctx, input)),
  tubeOutRecorded: recording
    .input(aboutPatientSchema)
    .mutation(({ ctx, input }) => recordTubeOut(ctx, input)),
  done: recording.input(aboutFlagSchema).mutation(({ ctx, input }) => closeFlag(ctx, input)),
});
