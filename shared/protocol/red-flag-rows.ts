import * as z from "zod";
import { sourced, words } from "#shared/protocol/interval-row.ts";
import { levels } from "#shared/protocol/levels.ts";
import { troubleKinds } from "#shared/tube/vocabulary.ts";

/** What is told or seen, how soon somebody is reached, and what holds until then. The route to them is set locally. */
export const redFlagRowSchema = z.strictObject({
  id: z.string().min(1).max(80),
  level: z.enum(levels),
  says: words,
  /** The clinic's own act until somebody is reached; null is "no row". */
  untilReached: words.nullable(),
  /** The entries that raise it by themselves, and how grave such an entry is. */
  raisedBy: z.array(z.strictObject({ trouble: z.enum(troubleKinds), grave: z.boolean() })),
  ...sourced,
});
export type RedFlagRow = z.infer<typeof redFlagRowSchema>;
