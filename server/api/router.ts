import { calendarRouter } from "#server/api/calendar-router.ts";
import { callRouter } from "#server/api/call-router.ts";
import { clinicRouter } from "#server/api/clinic-router.ts";
import { draftRouter } from "#server/api/draft-router.ts";
import { exportRouter } from "#server/api/export-router.ts";
import { figureRouter } from "#server/api/figure-router.ts";
import { flagRouter } from "#server/api/flag-router.ts";
import { listRouter } from "#server/api/list-router.ts";
import { patientRouter } from "#server/api/patient-router.ts";
import { proposalRouter } from "#server/api/proposal-router.ts";
import { protocolRouter } from "#server/api/protocol-router.ts";
import { readingRouter } from "#server/api/reading-router.ts";
import { recordRouter } from "#server/api/record-router.ts";
import { reviewRouter } from "#server/api/review-router.ts";
import { roomsRouter } from "#server/api/rooms-router.ts";
import { sheetRouter } from "#server/api/sheet-router.ts";
import { shelfRouter } from "#server/api/shelf-router.ts";
import { staffRouter } from "#server/api/staff-router.ts";
import { createCallerFactory, router } from "#server/api/trpc.ts";
import { tubeRouter } from "#server/api/tube-router.ts";
import { visitRouter } from "#server/api/visit-router.ts";

export const appRouter = router({
  calendar: calendarRouter,
  // A router cannot be named "call".
  calls: callRouter,
  clinic: clinicRouter,
  draft: draftRouter,
  export: exportRouter,
  flag: flagRouter,
  figure: figureRouter,
  list: listRouter,
  patient: patientRouter,
  proposal: proposalRouter,
  protocol: protocolRouter,
  reading: readingRouter,
  record: recordRouter,
  review: reviewRouter,
  rooms: roomsRouter,
  sheet: sheetRouter,
  shelf: shelfRouter,
  staff: staffRouter,
  tube: tubeRouter,
  visit: visitRouter,
});

export type AppRouter = typeof appRouter;

/** Calls procedures from the server's own side, through the same checks. */
export const createCaller = createCallerFactory(appRouter);
