import * as z from "zod";
import { findingsSchema } from "#shared/clinical/findings-schema.ts";
import { daySchema } from "#shared/day/when-schema.ts";
import { factSchema } from "#shared/tube/certainty-schema.ts";
import { line, note, told } from "#shared/tube/facts.ts";
import { ownerSchema } from "#shared/tube/owner-schema.ts";
import { findOuts, goingOn, reconcileAbouts, sides, whereabouts } from "#shared/tube/vocabulary.ts";

/** Tubes that one entry of the patient can name. */
const MOST_NAMED = 20;
const noted = { note: note.nullable() };
/** A tube as an entry of the patient names it; the number is what the entry is told by later. */
const named = { tube: z.string().min(1), number: z.int().min(1) };

/** Who cares for the tube, and until when: decisions, handovers, ends. At the newest payload version. */
export const carePayloads = {
  "removal decided": z.strictObject({
    decidedBy: line,
    by: daySchema,
    /** Who takes it out. */
    owner: ownerSchema,
    reason: note.nullable(),
  }),
  /** Open until a named person accepts it. */
  "handed over": z.strictObject({ to: line, person: line.nullable(), ...noted }),
  "accepted elsewhere": z.strictObject({ by: line, place: line.nullable(), how: line.nullable() }),
  /** By a named clinician: a fragment that stays, a removal that nobody can confirm any more. */
  "follow-up ended": z.strictObject({ decidedBy: line, reason: note }),
  transferred: z.strictObject({
    place: line,
    findOut: z.array(z.enum(findOuts)).max(findOuts.length),
    askWhom: line.nullable(),
    ...noted,
  }),
  "hospice decided": z.strictObject({
    decidedBy: line,
    until: daySchema,
    calls: z.enum(goingOn),
    exchanges: z.enum(goingOn),
    team: line.nullable(),
    ...noted,
  }),
  "whereabouts noted": z.strictObject({
    place: z.enum(whereabouts),
    where: line.nullable(),
    ...told,
    ...noted,
  }),
  "clinical state noted": z.strictObject({
    findings: findingsSchema.refine((found) => Object.values(found).some((fact) => fact !== undefined)),
    ...told,
    ...noted,
  }),
  "reconcile asked": z.strictObject({ about: z.enum(reconcileAbouts), says: note, ...told }),
  reconciled: z.strictObject({
    about: z.enum(reconcileAbouts),
    how: note,
    /** The side of each tube that has another now. */
    sides: z.array(z.strictObject({ ...named, side: factSchema(z.enum(sides)) })).max(MOST_NAMED),
  }),
  /** One of several was told out, and not which: open until one is recorded removed or somebody reconciles. */
  "reported out": z.strictObject({
    candidates: z.array(z.strictObject(named)).min(2).max(MOST_NAMED),
    toldBy: line,
    ...noted,
  }),
  /** Another record of the same person goes on in this one; while this stands, its entries count here. */
  "records joined": z.strictObject({
    /** Id of that record's patient. */
    from: z.string().min(1),
    /** What is added to the sequence of its entries, so that they follow those that stood here. */
    offset: z.int().min(0),
    /** Its tubes whose number was taken here, with the number that they have from now on. */
    numbers: z.array(z.strictObject(named)),
    how: note,
  }),
} as const;
