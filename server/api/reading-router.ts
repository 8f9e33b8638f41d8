import { procedure, router } from "#server/api/trpc.ts";
import { recordDiary } from "#server/output/record-diary.ts";
import { correctReading, recordReading, voidReading } from "#server/output/record-reading.ts";
import { aboutTubeSchema, correctingReadingSchema } from "#shared/record/act.ts";

const recording = procedure.meta({ subject: { kind: "none" } });

export const readingRouter = router({
  recorded: recording.input(aboutTubeSchema).mutation(({ ctx, input }) => recordReading(ctx, input)),
  diary: recording.input(aboutTubeSchema).mutation(({ ctx, input }) => recordDiary(ctx, input)),
  corrected: recording
    .input(correctingReadingSchema)
    .mutation(({ ctx, input }) => correctReading(ctx, input)),
  voided: recording.input(correctingReadingSchema).mutation(({ ctx, input }) => voidReading(ctx, input)),
});
