import * as z from "zod";
import type { Microlitres } from "#shared/output/microlitre.ts";

/** Any volume, as stored. */
export const microlitresSchema = z.custom<Microlitres>(Number.isSafeInteger, {
  message: "volume-not-understood",
});

/** A volume that was measured, or put in: never below zero. */
export const amountSchema = microlitresSchema.refine((volume) => volume >= 0, { message: "volume-negative" });
