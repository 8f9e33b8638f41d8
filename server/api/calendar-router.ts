import { procedure, router } from "#server/api/trpc.ts";
import { askCalendar, restoreCalendar } from "#server/calendar/change-calendar.ts";
import { proposeHolidays } from "#server/calendar/holidays.ts";
import { previewCalendar } from "#server/calendar/preview-change.ts";
import { calendarStory, viewCalendar } from "#server/calendar/view-calendar.ts";
import {
  askingHolidaysSchema,
  changingCalendarSchema,
  previewingCalendarSchema,
  restoringCalendarSchema,
} from "#shared/record/calendar/asked-schema.ts";

/** Nothing of a patient is shown. */
const ofCalendar = procedure.meta({ subject: { kind: "none" } });

export const calendarRouter = router({
  view: ofCalendar.query(({ ctx }) => viewCalendar(ctx.db)),
  history: ofCalendar.query(({ ctx }) => calendarStory(ctx.db)),
  holidays: ofCalendar.input(askingHolidaysSchema).query(({ ctx, input }) => proposeHolidays(ctx.db, input)),
  preview: procedure
    .meta({ subject: { kind: "list", name: "whom a change of the calendar touches" } })
    .input(previewingCalendarSchema)
    .query(({ ctx, input }) => previewCalendar(ctx.db, input)),
  change: ofCalendar.input(changingCalendarSchema).mutation(({ ctx, input }) => askCalendar(ctx, input)),
  restore: ofCalendar
    .input(restoringCalendarSchema)
    .mutation(({ ctx, input }) => restoreCalendar(ctx, input)),
});
