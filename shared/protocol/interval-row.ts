import * as z from "zod";
import { tubeKinds } from "#shared/tube/kind/kinds.ts";
import { factors, routes } from "#shared/tube/vocabulary.ts";

/** Every row says where its figures come from: numbers of shared/protocol/sources.ts, CP, MEM. */
export const sourced = { source: z.string().min(1).max(200) };

/** Words of a row, as they are shown. */
export const words = z.string().trim().min(1).max(400);

/** Days; null is "no row", which is not zero. */
const days = z.int().min(0).max(3650).nullable();
const age = z.int().min(0).max(3650);

/** Schema of IntervalRow (shared/tube/kind/define.ts), where each figure is explained, with the kind that it is a row of. */
export const intervalRowSchema = z.strictObject({
  kind: z.enum(tubeKinds),
  id: z.string().min(1).max(80),
  factor: z.enum(factors).nullable(),
  turn: z.enum(["any", "first", "later"]),
  asks: z.enum(["exchange", "review", "operator's date"]),
  note: words.nullable(),
  earliest: days,
  target: days,
  latest: days,
  hardLatest: days,
  notExchangedBefore: days,
  immatureUnder: days,
  immatureIfSlowUnder: days,
  matureFrom: days,
  inHospitalUnder: days,
  notRemovedBefore: days,
  byRoute: z
    .array(z.strictObject({ route: z.enum(routes), immatureUnder: age, notRemovedBefore: age }))
    .max(routes.length),
  ...sourced,
});
export type ProtocolRow = z.infer<typeof intervalRowSchema>;
