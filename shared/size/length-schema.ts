import * as z from "zod";
import type { Length } from "#shared/size/length.ts";

/** A stored length: a whole, countable number of units, never negative. */
export const lengthSchema = z.custom<Length>((value) => Number.isSafeInteger(value) && Number(value) >= 0, {
  message: "length-not-understood",
});
