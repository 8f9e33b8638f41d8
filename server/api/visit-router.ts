import * as z from "zod";
import { procedure, router } from "#server/api/trpc.ts";
import { bookVisit, moveVisit } from "#server/visits/book-visit.ts";
import { daySheet } from "#server/visits/day-sheet.ts";
import { bringHospitalList } from "#server/visits/hospital-list/bring-hospital-list.ts";
import { previewHospitalList } from "#server/visits/hospital-list/preview-hospital-list.ts";
import { noteVisit, prepareVisit } from "#server/visits/note-visit.ts";
import { offerSlots } from "#server/visits/offer-slots.ts";
import { viewDays } from "#server/visits/view-days.ts";
import { viewVisit } from "#server/visits/view-visit.ts";
import { visitLetter } from "#server/visits/visit-letter.ts";
import { visitsCalendar } from "#server/visits/visits-calendar.ts";
import { actIdSchema } from "#shared/record/act.ts";
import {
  askingSlotsSchema,
  bookingSchema,
  movingSchema,
  notingSchema,
  preparingSchema,
  visitDaysSchema,
  visitQuerySchema,
  visitSheetSchema,
} from "#shared/record/visit/asked-schema.ts";
import { encodings } from "#shared/sheet/encoding.ts";
import { bookingAnswersSchema } from "#shared/visit/hospital-list/columns.ts";

/** What is recorded changes a patient's stream, which names who did it; nothing is shown. */
const recording = procedure.meta({ subject: { kind: "none" } });
const ofPatient = procedure.meta({ subject: { kind: "patient", key: "patientId" } });

const hospitalListSchema = z.strictObject({
  /** Handed over by the route that takes the upload; nothing that comes as JSON holds bytes. */
  bytes: z.instanceof(Uint8Array),
  encoding: z.enum(encodings).nullable(),
  answers: bookingAnswersSchema,
});

export const visitRouter = router({
  offers: ofPatient.input(askingSlotsSchema).query(({ ctx, input }) => offerSlots(ctx.db, input)),
  view: ofPatient.input(visitQuerySchema).query(({ ctx, input }) => viewVisit(ctx.db, input)),
  days: procedure
    .meta({ subject: { kind: "list", name: "visits" } })
    .input(visitDaysSchema)
    .query(({ ctx, input }) => viewDays(ctx.db, input)),
  calendarFile: procedure
    .meta({ subject: { kind: "export", name: "visits.ics" } })
    .query(({ ctx }) => visitsCalendar(ctx.db)),
  sheet: procedure
    .meta({ subject: { kind: "print", key: "on" } })
    .input(visitSheetSchema)
    .query(({ ctx, input }) => daySheet(ctx.db, input)),
  letter: procedure
    .meta({ subject: { kind: "print", key: "patientId" } })
    .input(visitQuerySchema)
    .query(({ ctx, input }) => visitLetter(ctx.db, input)),
  booked: recording.input(bookingSchema).mutation(({ ctx, input }) => bookVisit(ctx, input)),
  moved: recording.input(movingSchema).mutation(({ ctx, input }) => moveVisit(ctx, input)),
  noted: recording.input(notingSchema).mutation(({ ctx, input }) => noteVisit(ctx, input)),
  /** A query though the route posts it: it shows patients, and that is written down. */
  hospitalPreviewed: procedure
    .meta({ subject: { kind: "list", name: "the hospital's bookings" } })
    .input(hospitalListSchema)
    .query(({ ctx, input }) => previewHospitalList(ctx.db, input)),
  hospitalBrought: recording
    .input(hospitalListSchema.extend({ actId: actIdSchema }))
    .mutation(({ ctx, input }) => bringHospitalList(ctx, input)),
  prepared: recording.input(preparingSchema).mutation(({ ctx, input }) => prepareVisit(ctx, input)),
});
