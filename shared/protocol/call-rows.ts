import * as z from "zod";
import { rungs } from "#shared/call/rungs.ts";
import { sourced, words } from "#shared/protocol/interval-row.ts";
import { tubeKinds } from "#shared/tube/kind/kinds.ts";
import { retentions, roles } from "#shared/tube/vocabulary.ts";

const days = z.int().min(0).max(365);
const hour = z.int().min(0).max(24);
const id = z.string().min(1).max(80);

/** A try falls into one of them; nobody is rung outside of all. By the clinic's clock. */
export const dayParts = ["morning", "afternoon", "evening"] as const;
export type DayPart = (typeof dayParts)[number];

/** What a question is asked of: the patient once, or each tube that it speaks of. */
const asks = ["the patient", "each tube"] as const;

/** A patient of whom, or a tube of which, another red flag is opened by the same answer. */
export const insteadIfs = ["immune suppression", "cord injury at T6 or above", "a tube is shut"] as const;
export type InsteadIf = (typeof insteadIfs)[number];

/** What an answer leads on to record. */
export const thenRecords = ["output", "tube out", "balloon water", "told of the tube"] as const;
export type ThenRecord = (typeof thenRecords)[number];

/** One question of a call, which tubes it speaks of, and what an answer opens. */
export const questionRowSchema = z.strictObject({
  id,
  asks: words,
  of: z.enum(asks),
  /** Empty: any role. */
  roles: z.array(z.enum(roles)),
  /** Empty: any kind. */
  kinds: z.array(z.enum(tubeKinds)),
  /** Empty: however it is held. */
  heldBy: z.array(z.enum(retentions)),
  /** Asked of tubes that are open, or shut; null is either. */
  only: z.enum(["open", "shut"]).nullable(),
  /** The answer that opens what follows; null: it opens nothing. */
  opensOn: z.enum(["yes", "no"]).nullable(),
  /** Name of a row of red flags. */
  redFlag: id.nullable(),
  instead: z.array(z.strictObject({ of: z.enum(insteadIfs), redFlag: id })).max(insteadIfs.length),
  thenRecord: z.enum(thenRecords).nullable(),
  ...sourced,
});
export type QuestionRow = z.infer<typeof questionRowSchema>;

/** Never more than so many attempts alike: then another way is tried (common practice, no source). */
export const MOST_ATTEMPTS = 3;

/** When somebody is called, beside the first call, what is asked, and what when nobody is reached. A list left empty and null are "no row". */
export const callRowsSchema = z.strictObject({
  /** Collection drains, until removal: not before the fewest of these days after the last call, by the most. */
  collectionEvery: z.strictObject({ days: z.array(days), ...sourced }).nullable(),
  /** Days of a capped or clamped trial, counted in hours and not in working days. */
  trialOn: z.strictObject({ days: z.array(days).min(1), closed: words, ...sourced }).nullable(),
  beforeExchange: z.strictObject({ days, workingDays: days, ...sourced }).nullable(),
  afterRemoval: z.strictObject({ from: days, to: days, ...sourced }).nullable(),
  /** Nothing entered for so many days of a tube whose output is measured. */
  diaryMissing: z.strictObject({ days: z.int().min(1).max(365), ...sourced }).nullable(),
  notReached: z
    .strictObject({
      /** No more than MOST_ATTEMPTS in a row that is drafted today; an older version may have stored more, and is read. */
      attempts: z.int().min(1),
      withinWorkingDays: days,
      /** Of trials, and this soon after placement: twice the same day. */
      twiceSameDayHours: z.int().min(1),
      ...sourced,
    })
    .nullable(),
  /** What follows when the attempts are used up, in this order; a physician comes last whether or not a row says so. */
  rungs: z.array(
    z.strictObject({
      rung: z.enum(rungs),
      /** So many working days after what came before it. */
      afterWorkingDays: days,
      says: words,
      ...sourced,
    }),
  ),
  /** Hours by the clinic's clock in which somebody is rung. */
  hours: z.array(z.strictObject({ part: z.enum(dayParts), from: hour, to: hour, ...sourced })),
  /** Of an inpatient: asked again, and the ward is rung about the tube. */
  whereaboutsEvery: z.strictObject({ days: z.int().min(1), ward: words, ...sourced }).nullable(),
  questions: z.array(questionRowSchema),
});
export type CallRows = z.infer<typeof callRowsSchema>;
