import * as z from "zod";
import { procedure, router } from "#server/api/trpc.ts";
import { viewIfUnchanged } from "#server/output/view-if-unchanged.ts";
import { viewOutput } from "#server/output/view-output.ts";
import { viewUrine } from "#server/output/view-urine.ts";
import { viewTube } from "#server/tubes/view-tube.ts";

const oneTube = z.strictObject({ tubeId: z.string().min(1).max(64) });
const tube = procedure.meta({ subject: { kind: "tube", key: "tubeId" } }).input(oneTube);

export const tubeRouter = router({
  view: tube.query(({ ctx, input }) => viewTube(ctx.db, input.tubeId)),
  ifUnchanged: tube.query(({ ctx, input }) => viewIfUnchanged(ctx.db, input.tubeId)),
  output: tube.query(({ ctx, input }) => viewOutput(ctx.db, input.tubeId)),
  urine: tube.query(({ ctx, input }) => viewUrine(ctx.db, input.tubeId)),
});
