import * as z from "zod";

/** The stored form of a Fact of the given value. */
export const factSchema = <T extends z.ZodType>(value: T) =>
  z.discriminatedUnion("certainty", [
    z.strictObject({ certainty: z.enum(["confirmed", "reported", "estimated"]), value }),
    z.strictObject({ certainty: z.literal("unknown") }),
  ]);
