import * as z from "zod";
import { procedure, router } from "#server/api/trpc.ts";
import { figuresFile } from "#server/export/csv/figures-table.ts";
import { behindFigure, figures } from "#server/figures/figures.ts";
import { figureNames, figureSpans } from "#shared/call/figures.ts";

const days = z.literal(figureSpans);

export const figureRouter = router({
  /** Counts alone: nobody is named. */
  view: procedure
    .meta({ subject: { kind: "none" } })
    .input(z.strictObject({ days }))
    .query(({ ctx, input }) => figures(ctx.db, input)),
  behind: procedure
    .meta({ subject: { kind: "list", name: "behind a figure" } })
    .input(z.strictObject({ days, figure: z.enum(figureNames) }))
    .query(({ ctx, input }) => behindFigure(ctx.db, input)),
  file: procedure
    .meta({ subject: { kind: "export", name: "figures.csv" } })
    .input(z.strictObject({ days }))
    .query(({ ctx, input }) => figuresFile(ctx.db, input)),
});
