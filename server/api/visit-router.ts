import { procedure, router } from "#server/api/trpc.ts";
import { bookVisit, moveVisit } from "#server/visits/book-visit.ts";
import { daySheet } from "#server/visits/day-sheet.ts";
import { noteVisit, prepareVisit } from "#server/visits/note-visit.ts";
import { offerSlots } from "#server/visits/offer-slots.ts";
import { viewDays } from "#server/visits/view-days.ts";
import { viewVisit } from "#server/visits/view-visit.ts";
import { visitLetter } from "#server/visits/visit-letter.ts";
import { visitsCalendar } from "#server/visits/visits-calendar.ts";
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

/** What is recorded changes a patient's stream, which names who did it; nothing is shown. */
const recording = procedure.meta({ subject: { kind: "none" } });
const ofPatient = procedure.meta({ subject: { kind: "patient", key: "patientId" } });

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
  prepared: recording.input(preparingSchema).mutation(({ ctx, input }) => prepareVisit(ctx, input)),
});
