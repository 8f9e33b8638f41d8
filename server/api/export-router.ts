import * as z from "zod";
import { procedure, router } from "#server/api/trpc.ts";
import { exportPartNames } from "#shared/words/exports.ts";

const named = z.strictObject({ part: z.enum(exportPartNames) });

export const exportRouter = router({
  /** Asked for each file before it is sent: whether this person may have it, written down that they took it. */
  file: procedure
    .meta({ subject: { kind: "export", key: "part" } })
    .input(named)
    .query(({ input }) => input.part),
});
