import * as z from "zod";
import { answerWords } from "#shared/call/outcomes.ts";
import type { Json } from "#shared/case/json.ts";
import { dayHalves } from "#shared/day/clinic-days.ts";
import { clinicCalendarSchema } from "#shared/day/clinic-days-schema.ts";
import { isDay } from "#shared/day/day.ts";
import { zoneSchema } from "#shared/day/instant-schema.ts";
import { daySchema } from "#shared/day/when-schema.ts";
import { coaxialSorts } from "#shared/fit/coaxial.ts";
import { eventForms, type FormKind } from "#shared/record/event-forms.ts";
import { sizedThings } from "#shared/size/size-ranges.ts";
import { abilities } from "#shared/visit/room.ts";

/**
 * A worked case of the clinic, as it stands in a file: what somebody types, what is computed of it, and what must come out. Nothing
 * else is taken: a slip in a name would be a case that checks nothing.
 */

/** A day of the calendar, or `+63`: so many days after the start. */
const AFTER_START = /^\+\d{1,4}$/;
const caseDay = z.string().refine((text) => isDay(text) || AFTER_START.test(text));

/** What was typed into a form, by field. */
const texts = z.record(z.string(), z.string());

const forms = ["reading", "call", ...(Object.keys(eventForms) as FormKind[])] as const;
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

const { openWeekdays, closures, halfDays } = clinicCalendarSchema.shape;
const calendarShape = { openWeekdays, closures, halfDays };

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
  calendar: z.strictObject(calendarShape).optional(),
};
export type CaseRecord = z.infer<z.ZodObject<typeof recordShape>>;

const ofTube = { ...recordShape, tube: z.string().min(1).optional() };

const clock = z.string().regex(/^([01]\d|2[0-3]):[0-5]\d$/);
const moment = z.strictObject({ on: daySchema, at: clock });
const weekday = z.literal([1, 2, 3, 4, 5, 6, 7]);
const orNone = daySchema.nullable().default(null);
const days = z.int().min(0).nullable().optional();

/** Rooms, visits that take them, and the visit that is asked for; windows by the case's own words for the tubes. */
const slotsShape = {
  now: moment,
  calendar: z.strictObject(calendarShape),
  rooms: z.array(
    z.strictObject({
      name: z.string().min(1),
      can: z.array(z.enum(abilities)).default([]),
      hours: z.array(z.strictObject({ weekdays: z.array(weekday).min(1), from: clock, to: clock })),
      reserve: z.int().min(0).default(0),
    }),
  ),
  booked: z
    .array(
      z.strictObject({
        whose: z.string().min(1),
        room: z.string(),
        on: daySchema,
        from: clock,
        minutes: z.int().min(1),
      }),
    )
    .default([]),
  windows: z.record(z.string(), z.strictObject({ earliest: orNone, target: orNone, latest: orNone })),
  visit: z.strictObject({
    minutes: z.int().min(1),
    needs: z.array(z.enum(abilities)).default([]),
    notOn: z.array(z.strictObject({ weekday, half: z.enum(dayHalves).nullable().default(null) })).default([]),
    readyFrom: moment.nullable().default(null),
  }),
  urgent: z.boolean().default(false),
  days: z.int().min(1).max(400).default(120),
};

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
  /** `newRows`: days of rows by their ids, as a next version has them; `newCalendar`: the same of the calendar. */
  window: z.strictObject({
    ...recordShape,
    newRows: z.record(z.string(), z.strictObject({ earliest: days, target: days, latest: days })).optional(),
    newCalendar: z.strictObject(calendarShape).optional(),
  }),
  slots: z.strictObject(slotsShape),
  calls: z.strictObject(recordShape),
  /** `since`: the day on which it came out; today, if left out. */
  "tube-out": z.strictObject({
    ...ofTube,
    out: z.enum(["out", "part out"]),
    since: caseDay.optional(),
  }),
  /** `question`: a row of the table by its id, asked of the patient or of `tube`. */
  "red-flag": z.strictObject({
    ...ofTube,
    question: z.string().min(1),
    answer: z.enum(answerWords),
  }),
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
  window: caseOf("window"),
  slots: caseOf("slots"),
  calls: caseOf("calls"),
  "tube-out": caseOf("tube-out"),
  "red-flag": caseOf("red-flag"),
} as const;

export type WorkedCase = { readonly [C in Compute]: z.infer<(typeof caseSchemas)[C]> }[Compute];
