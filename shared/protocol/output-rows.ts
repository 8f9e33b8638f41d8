import * as z from "zod";
import { sourced, words } from "#shared/protocol/interval-row.ts";
import { levels } from "#shared/protocol/levels.ts";
import { tubeKinds } from "#shared/tube/kind/kinds.ts";

const kinds = z.array(z.enum(tubeKinds)).min(1);
const ml = z.number().min(0);
const hours = z.int().min(1);
const level = z.enum(levels);

/** Rows by which output is read, beside the low net day of `output`. An empty list and null are "no row". */
export const outputRowsSchema = z.strictObject({
  /** Kinds whose low net day is another than the general one. */
  lowNetInstead: z.array(z.strictObject({ kinds, lowNetMl: ml, lowDays: z.int().min(1), ...sourced })),
  /** The numeric part needs a last complete day, and a clinical state, no older than this. */
  lastCompleteDayHours: z.strictObject({ hours, ...sourced }).nullable(),
  clinicalStateHours: z.strictObject({ hours, ...sourced }).nullable(),
  /** A temperature, in degrees Celsius, from which on it is a fever. */
  fever: z.strictObject({ fromC: z.number().min(35).max(42), ...sourced }).nullable(),
  plateau: z
    .strictObject({ overMlPer24h: ml, days: z.int().min(1), ofLast: z.int().min(1), ...sourced })
    .nullable(),
  /** A reading without its flush where one is ordered: cannot tell. */
  flushNotRecorded: z.strictObject({ says: words, ...sourced }).nullable(),
  /** Nothing for so long. `onlyWayOut` is the level with one kidney, a transplant, or no urine by any route. */
  dry: z.array(z.strictObject({ kinds, hours, level, onlyWayOut: level.nullable(), ...sourced })),
  /** Under this, unless a usual level is accepted; null where only questions are asked. */
  low: z.array(z.strictObject({ kinds, underMlPer24h: ml.nullable(), asks: words.nullable(), ...sourced })),
  /** Over this, from so many days after the start; null from the first. */
  high: z.array(z.strictObject({ kinds, overMlPer24h: ml, fromDay: z.int().min(1).nullable(), ...sourced })),
  suddenDrop: z
    .strictObject({
      overPercent: z.number().min(0).max(100),
      underMedianOfDays: z.int().min(1),
      andMl: ml,
      notInFirstHours: hours,
      ...sourced,
    })
    .nullable(),
  chestTube: z
    .strictObject({ kinds, noAirLeakHours: hours, underMlPer24h: ml, and: words, ...sourced })
    .nullable(),
  /** Tubes drained by session. The numeric part is null where the table has none. */
  sessions: z.array(
    z.strictObject({
      kinds,
      lowMl: ml.nullable(),
      lowSessions: z.int().min(1).nullable(),
      and: words.nullable(),
      ceilingMl: ml,
      stopsOn: words,
      ...sourced,
    }),
  ),
  /** A fluid that is not expected of this tube; pink urine this soon after a procedure is asked again the next day. */
  newFluid: z.strictObject({ level, pinkUrineHours: hours, ...sourced }).nullable(),
  plausibility: z
    .strictObject({ overMlPer24h: ml, overTimesMedian: z.number().min(1), andMoreMl: ml, ...sourced })
    .nullable(),
});
export type OutputRows = z.infer<typeof outputRowsSchema>;
