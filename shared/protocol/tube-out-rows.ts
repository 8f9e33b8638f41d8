import * as z from "zod";
import { sourced, words } from "#shared/protocol/interval-row.ts";
import { tubeKinds } from "#shared/tube/kind/kinds.ts";

/** What is shown when a tube is out, by the maturity of its tract. Shown, not decided. */
export const tubeOutRowSchema = z.strictObject({
  id: z.string().min(1).max(80),
  /** Empty: any kind. */
  kinds: z.array(z.enum(tubeKinds)),
  /** Wholly out, or only pulled back. */
  out: z.enum(["out", "part out"]),
  immature: words,
  mature: words,
  /** What holds until somebody is reached. */
  untilReached: words,
  ...sourced,
});
export type TubeOutRow = z.infer<typeof tubeOutRowSchema>;
