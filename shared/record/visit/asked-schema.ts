import * as z from "zod";
import { dayHalves } from "#shared/day/clinic-days.ts";
import { daySchema } from "#shared/day/when-schema.ts";
import { aboutPatientSchema } from "#shared/record/act.ts";
import { visitPayloads } from "#shared/tube/visit-payloads.ts";
import { visitActs } from "#shared/visit/visit-acts.ts";

/** Longest span of days that is looked at in one go. */
const MOST_DAYS = 42;

const id = z.string().min(1).max(64);
const tubes = z.array(z.strictObject({ tubeId: id, act: z.enum(visitActs) })).max(20);
const notOn = z.array(
  z.strictObject({ weekday: z.literal([1, 2, 3, 4, 5, 6, 7]), half: z.enum(dayHalves).nullable() }),
);

export const askingSlotsSchema = z.strictObject({
  patientId: id,
  tubes: tubes.optional(),
  first: id.optional(),
  moves: id.optional(),
  notOn: notOn.optional(),
  minutes: z.int().min(1).max(1440).optional(),
  urgent: z.boolean().optional(),
});

const ofVisit = { ...aboutPatientSchema.shape, visitId: id };

export const bookingSchema = z.strictObject({ ...aboutPatientSchema.shape, tubes, urgent: z.boolean() });
export const movingSchema = z.strictObject({ ...ofVisit, urgent: z.boolean() });
export const notingSchema = z.strictObject({ ...ofVisit, state: visitPayloads["visit noted"].shape.state });
export const preparingSchema = z.strictObject(ofVisit);
export const visitQuerySchema = z.strictObject({ patientId: id, visitId: id });
export const visitDaysSchema = z.strictObject({ from: daySchema, days: z.int().min(1).max(MOST_DAYS) });
export const visitSheetSchema = z.strictObject({ on: daySchema });
