import * as z from "zod";
import { answerWords, callees, letterTos, tryOutcomes } from "#shared/call/outcomes.ts";
import { daySchema } from "#shared/day/when-schema.ts";
import { levels } from "#shared/protocol/levels.ts";
import { line, note } from "#shared/tube/facts.ts";

const clockTime = z.string().regex(/^([01]\d|2[0-3]):[0-5]\d$/);
const words = z.string().min(1).max(400);
const id = z.string().min(1);

/** Answers that one call can hold: every question of every tube. */
const MOST_ANSWERS = 400;
/** A tube of which the patient was asked, or of which something was told; null is the patient. */
const ofTube = z.strictObject({ tube: id, number: z.int().min(1) }).nullable();
const onFlag = { flag: id };

/** Calls, letters, and what is told in them, at the newest payload version. */
export const callPayloads = {
  "call attempted": z.strictObject({
    to: z.enum(callees),
    /** The number that was rung, as typed. */
    number: line.nullable(),
    outcome: z.enum(tryOutcomes),
    /** When they asked to be rung again. */
    back: z.strictObject({ on: daySchema, at: clockTime.nullable() }).nullable(),
    /** Through whom it was spoken, in which language; null where nobody was needed. */
    interpreter: line.nullable(),
    /** Each question with the words in which it was asked then. */
    answers: z
      .array(z.strictObject({ question: id, asks: words, of: ofTube, says: z.enum(answerWords) }))
      .max(MOST_ANSWERS),
    note: note.nullable(),
  }),
  "letter sent": z.strictObject({ to: z.enum(letterTos), note: note.nullable() }),
  /** By a physician, after nobody was reached. No day: nobody is called any more, of records that have all ended. */
  "not reached decided": z.strictObject({ decidedBy: line, again: daySchema.nullable(), reason: note }),
  /** With the words of its row as they were told then. */
  "red flag raised": z.strictObject({
    row: id.nullable(),
    level: z.enum(levels),
    says: words,
    untilReached: words.nullable(),
    of: ofTube,
    toldBy: line.nullable(),
    note: note.nullable(),
  }),
  /** To a named person, at the time of the entry. */
  "red flag handed": z.strictObject({ ...onFlag, to: line, note: note.nullable() }),
  "red flag done": z.strictObject({ ...onFlag, by: line, what: note }),
  /** That a tube is inside them, and by when it is changed or taken out. */
  "told of the tube": z.strictObject({ whom: z.enum(["the patient", "a carer"]), language: line, by: line }),
} as const;
