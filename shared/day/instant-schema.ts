import * as z from "zod";
import { type Instant, isInstant, isZone, type Zone } from "#shared/day/instant.ts";

export const instantSchema = z.custom<Instant>((value) => typeof value === "number" && isInstant(value), {
  message: "time-not-understood",
});
export const zoneSchema = z.custom<Zone>((value) => typeof value === "string" && isZone(value), {
  message: "choice-unknown",
});
