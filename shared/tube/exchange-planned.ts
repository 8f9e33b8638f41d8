import * as z from "zod";
import { daySchema } from "#shared/day/when-schema.ts";
import type { Coaxial } from "#shared/fit/coaxial.ts";
import { coaxialSchema } from "#shared/fit/coaxial-schema.ts";
import type { ExchangePlan } from "#shared/fit/exchange-plan.ts";
import { stateConcerns } from "#shared/fit/inside.ts";
import { lengthSchema } from "#shared/size/length-schema.ts";
import { unknownFact } from "#shared/tube/certainty.ts";
import { factSchema } from "#shared/tube/certainty-schema.ts";
import { boreSchema, line } from "#shared/tube/facts.ts";
import { tubeKinds } from "#shared/tube/kind/kinds.ts";
import { retentions } from "#shared/tube/vocabulary.ts";

const length = factSchema(lengthSchema);

/** What was recorded of the tube in place when the plan was made. */
export const checkedOnSchema = z.strictObject({
  size: length,
  takes: length,
  bores: z.array(boreSchema),
  endHole: factSchema(z.enum(["open", "closed"])),
  concerns: z.array(z.enum(stateConcerns)),
  fullLength: length,
  externalLength: length,
  retention: factSchema(z.enum(retentions)),
});
export type CheckedOn = z.infer<typeof checkedOnSchema>;

/** A planned exchange. `things`, who agreed and why are absent in what was planned before they could be kept. */
export const exchangePlannedSchema = z.strictObject({
  on: daySchema.nullable(),
  /** Of the tube to come, and its outside and label. */
  kind: z.enum(tubeKinds),
  size: length,
  takes: length,
  wire: length,
  /** All that lies one in another, as it stood on the shelf or was typed. */
  things: z
    .strictObject({
      wire: coaxialSchema,
      toCome: coaxialSchema,
      stiffener: coaxialSchema.nullable(),
      sheath: coaxialSchema.nullable(),
    })
    .optional(),
  agreedBy: line.nullable().optional(),
  /** Why it goes on all the same, where a row asks. */
  reason: line.nullable().optional(),
  /** Codes of the answers as they stood, so that what was seen is kept. */
  seen: z.array(z.string().max(400)).max(24),
  checkedOn: checkedOnSchema.optional(),
});
export type ExchangePlanned = z.infer<typeof exchangePlannedSchema>;

const blank = { takes: unknownFact, bores: [], endHole: unknownFact };

const bare = (sort: "wire" | "tube", name: string, of: Pick<Coaxial, "outside" | "inside">): Coaxial => ({
  sort,
  name,
  ...of,
  tolerance: null,
  length: unknownFact,
});

type Planned = Pick<ExchangePlanned, "on" | "kind" | "size" | "takes" | "wire" | "things">;

/** What the plan has lying one in another. Of a plan that kept sizes alone, nothing else is known. */
export function exchangePlanOf({ on, kind, size, takes, wire, things }: Planned): ExchangePlan {
  if (things !== undefined) return { on, kind, ...things };
  return {
    on,
    kind,
    wire: bare("wire", "the wire", { outside: wire, inside: blank }),
    toCome: bare("tube", "the tube to come", { outside: size, inside: { ...blank, takes } }),
    stiffener: null,
    sheath: null,
  };
}
