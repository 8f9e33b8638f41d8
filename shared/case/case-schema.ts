import * as z from "zod";
import type { Json } from "#shared/case/json.ts";
import { clinicCalendarSchema } from "#shared/day/clinic-days-schema.ts";
import { isDay } from "#shared/day/day.ts";
import { zoneSchema } from "#shared/day/instant-schema.ts";
import { daySchema } from "#shared/day/when-schema.ts";
import { coaxialSorts } from "#shared/fit/coaxial.ts";
import { eventForms, type FormKind } from "#shared/record/event-forms.ts";
import { sizedThings } from "#shared/size/size-ranges.ts";

/**
 * A worked case of the clinic, as it stands in a file: what somebody types, what is computed of it, and what must come out. Nothing
 * else is taken: a slip in a name would be a case that checks nothing.
 */

/** A day of the calendar, or `+63`: so many days after the start. */
const AFTER_START = /^\+\d{1,4}$/;
const caseDay = z.string().refine((text) => isDay(text) || AFTER_START.test(text));

/** What was typed into a form, by field. */
const texts = z.record(z.string(), z.string());

const forms = ["reading", ...(Object.keys(eventForms) as FormKind[])] as const;
export type CaseForm = (typeof forms)[number];

const entrySchema = z.strictObject({
  form: z.enum(forms),
  /** The day on which it is typed; the start, if left out. */
  on: caseDay.optional(),
  at: z.string().optional(),
  /** The case's own word for the tube. */
  tube: z.string().min(1).optional(),
  /** For a conversion: the word for the tube that it opens. */
  opens: z.string().min(1).optional(),
  typed: texts,
});
export type CaseEntry = z.infer<typeof entrySchema>;

const { openWeekdays, closures } = clinicCalendarSchema.shape;

const recordShape = {
  zone: zoneSchema,
  start: daySchema,
  entries: z.array(entrySchema).min(1),
  today: caseDay,
  /** The clock time of `today`. */
  at: z.string().optional(),
  birth: daySchema.optional(),
  /** The form of the patient's conditions, as typed on the start day. */
  conditions: texts.optional(),
  calendar: z.strictObject({ openWeekdays, closures }).optional(),
};
export type CaseRecord = z.infer<z.ZodObject<typeof recordShape>>;

const ofTube = { ...recordShape, tube: z.string().min(1).optional() };

/** What each computation is given. */
const givens = {
  length: z.strictObject({ thing: z.enum(sizedThings), typed: z.string() }),
  "tube-state": z.strictObject(ofTube),
  "open-steps": z.strictObject(recordShape),
  /** `plan`: the form of a planned exchange: the wire, and the tube to come. */
  passage: z.strictObject({ ...ofTube, plan: texts }),
  /** `things`, the innermost first: a sort, and the texts of its form on the page Sizes. */
  chain: z.strictObject({
    things: z.array(z.strictObject({ sort: z.enum(coaxialSorts), typed: texts })).min(2),
  }),
  /** `plan` as above; `shelf`: types as their form takes them. */
  "planned-exchange": z.strictObject({
    ...ofTube,
    plan: texts,
    shelf: z.array(texts).optional(),
  }),
  "net-output": z.strictObject(ofTube),
  "output-days": z.strictObject(ofTube),
  criterion: z.strictObject(ofTube),
  trend: z.strictObject(ofTube),
  alarm: z.strictObject(ofTube),
} as const;

export type Compute = keyof typeof givens;
export type Given<C extends Compute> = z.infer<(typeof givens)[C]>;
export const computes = Object.keys(givens) as Compute[];

const json: z.ZodType<Json> = z.json();
const expect = z.record(z.string(), json).refine((named) => Object.keys(named).length > 0);

const caseOf = <C extends Compute>(compute: C) =>
  z.strictObject({
    name: z.string(),
    note: z.string(),
    compute: z.literal(compute),
    given: givens[compute],
    expect,
  });

/** The schema of a case, by what it computes. */
export const caseSchemas = {
  length: caseOf("length"),
  "tube-state": caseOf("tube-state"),
  "open-steps": caseOf("open-steps"),
  passage: caseOf("passage"),
  chain: caseOf("chain"),
  "planned-exchange": caseOf("planned-exchange"),
  "net-output": caseOf("net-output"),
  "output-days": caseOf("output-days"),
  criterion: caseOf("criterion"),
  trend: caseOf("trend"),
  alarm: caseOf("alarm"),
} as const;

export type WorkedCase = { readonly [C in Compute]: z.infer<(typeof caseSchemas)[C]> }[Compute];
