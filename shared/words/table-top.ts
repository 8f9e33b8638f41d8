import type { Coaxial } from "#shared/fit/coaxial.ts";
import type { ExchangeAnswer, ExchangePlan } from "#shared/fit/exchange-plan.ts";
import type { Length } from "#shared/size/length.ts";
import { printBoth, printLength } from "#shared/size/print-length.ts";
import { unknownFact } from "#shared/tube/certainty.ts";
import { kindOf } from "#shared/tube/kind/kinds.ts";
import { readyLines, releaseLines } from "#shared/words/exchange-plan.ts";
import { toldFact } from "#shared/words/facts.ts";

/** Lines of a printed list under a head. */
export type TableTopGroup = { readonly head: string; readonly lines: readonly string[] };

const outsideOf = ({ sort, outside }: Coaxial): string =>
  toldFact(outside, {
    what: "size",
    print: (of) => printLength(of, sort === "wire" ? "in" : "F"),
    telling: "marked",
  });

/** A sheath is sized by its inside, as it was measured or else as its package says. */
function sheathSizes({ inside: { bores, takesDevice = unknownFact } }: Coaxial): readonly string[] {
  const measured = bores.map((bore) =>
    toldFact(bore.inside, {
      what: "inside",
      print: (of) => `inside ${printBoth(of, "mm", "F")}`,
      telling: "marked",
    }),
  );
  if (measured.length > 0) return measured;
  const labelled = { print: (of: Length) => `takes ${printBoth(of, "F", "mm")}`, telling: "marked" } as const;
  return [toldFact(takesDevice, { what: "inside", ...labelled })];
}

/** A thing by its name on the shelf, its size in the trade's unit, and its length. */
function thingLine(what: string, thing: Coaxial): string {
  const sizes = thing.sort === "sheath" ? sheathSizes(thing) : [outsideOf(thing)];
  const long = toldFact(thing.length, {
    what: "length",
    print: (of) => printLength(of, "cm"),
    telling: "marked",
  });
  const named = thing.name.startsWith("the ") ? what : `${what}: ${thing.name}`;
  return [named, ...sizes, long].join(", ");
}

/** What an exchange is planned with, a line each. */
export const plannedLines = ({ kind, wire, toCome, stiffener, sheath }: ExchangePlan): readonly string[] => [
  thingLine("Wire", wire),
  thingLine(`Tube to come (${kindOf(kind).name})`, toCome),
  ...(stiffener === null ? [] : [thingLine("Stiffener", stiffener)]),
  ...(sheath === null ? [] : [thingLine("Sheath", sheath)]),
];

/** The dilators of the shelf for the step, those between the sizes and the one above. */
function dilators({ dilators: of }: ExchangeAnswer): readonly string[] {
  if (of === null) return [];
  const all = [...of.between, ...(of.above === null ? [] : [of.above])];
  return all.length === 0
    ? ["Dilators: none on the shelf for this step"]
    : all.map(({ name }) => `Dilator: ${name}`);
}

/** Wires of the shelf that are known to pass both tubes, the planned one apart. */
const otherWires = ({ ready }: ExchangeAnswer, wire: Coaxial): readonly string[] =>
  ready.wires
    .filter(({ verdict, type }) => verdict === "passes" && type.name !== wire.name)
    .map(({ type }) => `Another wire that passes both tubes by size: ${type.name}`);

/** What has to be on the table: what is planned, what goes with it, and what the clinic's list says of letting the old tube go. */
export function tableTopLines(plan: ExchangePlan, answer: ExchangeAnswer): readonly TableTopGroup[] {
  const beside = [...dilators(answer), ...readyLines(answer.ready), ...otherWires(answer, plan.wire)];
  return [
    { head: "Planned", lines: plannedLines(plan) },
    { head: "Ready beside it", lines: beside },
    { head: "To let the tube in place go", lines: releaseLines(answer) },
    {
      head: "Settled before",
      lines: [
        ...(answer.tract.asks === null ? [] : [`Question of the row: ${answer.tract.asks}`]),
        "Two identifiers and the side, asked of the patient",
        "Allergies, blood thinners and isolation, as the record has them",
      ],
    },
  ];
}
