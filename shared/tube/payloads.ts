import * as z from "zod";
import { daySchema, whenSchema } from "#shared/day/when-schema.ts";
import { lengthSchema } from "#shared/size/length-schema.ts";
import { alarmPayloads } from "#shared/tube/alarm-payloads.ts";
import { callPayloads } from "#shared/tube/call-payloads.ts";
import { carePayloads } from "#shared/tube/care-payloads.ts";
import { factSchema } from "#shared/tube/certainty-schema.ts";
import { coursePayloads } from "#shared/tube/course-payloads.ts";
import { exchangePlannedSchema } from "#shared/tube/exchange-planned.ts";
import { concernsSchema, line, note, told, tubeFactsSchema, yesNo } from "#shared/tube/facts.ts";
import { tubeKinds } from "#shared/tube/kind/kinds.ts";
import { ownerSchema } from "#shared/tube/owner-schema.ts";
import { reviewPayloads } from "#shared/tube/review-payloads.ts";
import { stepKinds } from "#shared/tube/step-kinds.ts";
import { visitPayloads } from "#shared/tube/visit-payloads.ts";
import { callOutcomes, modes, roles, sides } from "#shared/tube/vocabulary.ts";

export const operatorPlanSchema = z.strictObject({
  act: z.enum(["exchange", "remove", "review"]),
  by: daySchema,
  byWhom: line.nullable(),
  reason: line.nullable(),
});
export type OperatorPlan = z.infer<typeof operatorPlanSchema>;

/** What a record opens with, however the tube came to the clinic. */
const opening = {
  kind: z.enum(tubeKinds),
  role: z.enum(roles),
  mode: z.enum(modes),
  /** Number of the tube within the patient, given once and never reused. */
  number: z.int().min(1),
  side: factSchema(z.enum(sides)),
  organ: line.nullable(),
  route: line.nullable(),
  cavity: line.nullable(),
  indication: line.nullable(),
  cancerObstruction: factSchema(z.boolean()),
  facts: tubeFactsSchema,
  plan: operatorPlanSchema.nullable(),
  /** Absent in what was recorded before notes could be kept with an opening. */
  note: note.optional(),
};

const renewal = {
  facts: tubeFactsSchema,
  plan: operatorPlanSchema.nullable(),
  /** Another hospital's name or place in words; null when done here. */
  elsewhere: line.nullable(),
  difficult: z.boolean(),
  note: note.nullable(),
};

/** Where the old tube is now, in words. Absent in what was recorded before it was asked. */
const oldTube = { oldTube: line.optional() };

const clockTime = z.string().regex(/^([01]\d|2[0-3]):[0-5]\d$/);

export const conditionsSchema = z.strictObject({
  pregnancy: yesNo.optional(),
  stoneFormer: yesNo.optional(),
  singleKidney: yesNo.optional(),
  transplantKidney: yesNo.optional(),
  conduitOrNeobladder: yesNo.optional(),
  immuneSuppression: yesNo.optional(),
  cordInjuryT6OrAbove: yesNo.optional(),
  ascites: yesNo.optional(),
  steroids: yesNo.optional(),
  malnutrition: yesNo.optional(),
  diabetes: yesNo.optional(),
  chemotherapy: yesNo.optional(),
  hospice: yesNo.optional(),
  allergies: factSchema(line).optional(),
  bloodThinners: factSchema(line).optional(),
  bloodThinnerReason: factSchema(line).optional(),
  isolation: factSchema(line).optional(),
});
export type Conditions = z.infer<typeof conditionsSchema>;

/**
 * Every kind of event at its newest payload version. A new version is a new schema here, a step in lift.ts, and a row in
 * tests/frozen; old payloads are lifted on read and never rewritten.
 */
export const payloads = {
  placed: z.strictObject({ ...opening }),
  "taken over": z.strictObject({ ...opening, from: line.nullable(), tractSince: whenSchema }),
  checked: z.strictObject({ study: line.nullable(), finding: note.nullable(), concerns: concernsSchema }),
  exchanged: z.strictObject(renewal),
  upsized: z.strictObject(renewal),
  downsized: z.strictObject(renewal),
  salvaged: z.strictObject(renewal),
  "new puncture": z.strictObject(renewal),
  capped: z.strictObject({ covers: line.nullable(), bagAtHome: yesNo }),
  uncapped: z.strictObject({ mode: z.enum(modes) }),
  "tip position": z.strictObject({ inPlace: yesNo, where: line.nullable() }),
  "partly dislodged": z.strictObject({
    externalLength: factSchema(lengthSchema),
    ...oldTube,
    ...told,
    note: note.nullable(),
  }),
  "fell out": z.strictObject({ whole: yesNo, ...oldTube, ...told, note: note.nullable() }),
  "not replaced": z.strictObject({ decidedBy: line, reason: note }),
  converted: z.strictObject({ closes: z.string(), opens: z.string(), opening: z.strictObject(opening) }),
  removed: z.strictObject({
    whole: yesNo,
    loopReleased: yesNo,
    seenHow: line.nullable(),
    byWhom: line.nullable(),
    /** That its string came out too, and when the site is looked at. Absent in what was recorded before they were asked. */
    stringOut: yesNo.optional(),
    siteCheckOn: daySchema.optional(),
    /** Who told it, when nobody here saw it; null when done here. */
    toldBy: line.nullable(),
  }),
  died: z.strictObject({ toldBy: line.nullable() }),
  "facts noted": z.strictObject({
    facts: tubeFactsSchema,
    side: factSchema(z.enum(sides)).optional(),
    mode: z.enum(modes).optional(),
    ...told,
    note: note.nullable(),
  }),
  verified: z.strictObject({ how: line }),
  "clock dated": z.strictObject({
    catheterSince: whenSchema,
    tractSince: whenSchema.nullable(),
    how: line.nullable(),
  }),
  "plan recorded": z.strictObject({ plan: operatorPlanSchema }),
  "exchange planned": exchangePlannedSchema,
  "conditions noted": z.strictObject({ conditions: conditionsSchema, ...told }),
  "step assigned": z.strictObject({
    step: z.enum(stepKinds),
    owner: ownerSchema,
  }),
  called: z.strictObject({
    outcome: z.enum(callOutcomes),
    note: note.nullable(),
  }),
  "dates confirmed": z.strictObject({ note: note.nullable() }),
  amended: z.strictObject({
    reason: note,
    when: whenSchema,
    time: clockTime.nullable(),
    payload: z.unknown(),
  }),
  voided: z.strictObject({ reason: note, wrongPatient: z.boolean() }),
  ...coursePayloads,
  ...carePayloads,
  ...reviewPayloads,
  ...alarmPayloads,
  ...visitPayloads,
  ...callPayloads,
} as const;

export type EventKind = keyof typeof payloads;
export type Payload<K extends EventKind> = z.infer<(typeof payloads)[K]>;
export type Opening = Payload<"placed">;
export type Renewal = Payload<"exchanged">;
