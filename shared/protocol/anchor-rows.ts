import * as z from "zod";
import { sourced } from "#shared/protocol/interval-row.ts";
import { tubeKinds } from "#shared/tube/kind/kinds.ts";
import { skinHolds } from "#shared/tube/vocabulary.ts";

const day = z.int().min(0).max(365);

/** What usually holds a kind at the skin, and from which day to which it is due out: of anchors after the puncture, of a suture after the tube was put in. */
export const anchorRowSchema = z.strictObject({
  kind: z.enum(tubeKinds),
  holds: z.enum(skinHolds),
  from: day,
  to: day,
  ...sourced,
});
export type AnchorRow = z.infer<typeof anchorRowSchema>;
