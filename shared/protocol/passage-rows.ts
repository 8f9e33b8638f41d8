import * as z from "zod";
import { sourced } from "#shared/protocol/interval-row.ts";
import { lengthSchema } from "#shared/size/length-schema.ts";

/** What one thing needs to pass through another, where a figure does not come with a tolerance of its own. */
export const passageRowsSchema = z.strictObject({
  /** What goes through must be thinner than a measured bore by this much. */
  clearance: lengthSchema,
  /** A measured bore may be wider or narrower by this much. */
  boreTolerance: lengthSchema,
  /** An outside may be thicker or thinner by this much: a wire's, and that of anything else. Null: no row. */
  outsideTolerance: z.strictObject({
    wire: lengthSchema.nullable(),
    device: lengthSchema.nullable(),
    ...sourced,
  }),
  ...sourced,
});
