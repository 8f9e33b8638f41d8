import type { Bore } from "#shared/fit/inside.ts";
import type { Texts } from "#shared/record/field-spec.ts";
import { printOutside } from "#shared/shelf/outside.ts";
import type { NewShelfType } from "#shared/shelf/shelf-type.ts";
import type { Length, LengthUnit } from "#shared/size/length.ts";
import { printExactly } from "#shared/size/print-exactly.ts";
import type { Fact } from "#shared/tube/certainty.ts";
import { kindOf } from "#shared/tube/kind/kinds.ts";

const inUnits =
  (...units: [LengthUnit, ...LengthUnit[]]) =>
  (length: Length): string =>
    printExactly(length, units);

/** A fact as it is typed: "~8 F" where it is estimated; `unknown` where nobody knows. */
export function factText<T>(fact: Fact<T>, print: (value: T) => string, unknown = ""): string {
  if (fact.certainty === "unknown") return unknown;
  return `${fact.certainty === "estimated" ? "~" : ""}${print(fact.value)}`;
}

/** "1.9 mm ± 0.05 mm": one measured inside as it is typed. */
export function boreText({ inside, tolerance }: Bore): string {
  const size = factText(inside, inUnits("mm", "in"), "?");
  return tolerance === null ? size : `${size} ± ${inUnits("mm", "in")(tolerance)}`;
}

const isReported = ({ certainty }: Fact<unknown>): boolean => certainty === "reported";

/** Whether anything of a type was told by others. */
export const toldByOthers = ({ bores, ...type }: NewShelfType): boolean =>
  [type.outside, type.takes, type.takesDevice, type.endHole, type.length, type.retention].some(isReported) ||
  bores.some(({ inside }) => isReported(inside));

/** A type as it would be typed into its form: reading these texts again gives the same type. */
export const typeTexts = (type: NewShelfType): Texts => ({
  sort: type.sort,
  name: type.name,
  outside: factText(type.outside, (length) => printOutside(length, type.sort), "?"),
  takes: factText(type.takes, inUnits("in", "mm")),
  takesDevice: factText(type.takesDevice, inUnits("F", "mm", "in")),
  bores: type.bores.map((bore) => `${bore.place} ${boreText(bore)}`).join(", "),
  endHole: factText(type.endHole, String),
  length: factText(type.length, inUnits("cm", "mm")),
  retention: factText(type.retention, String),
  kinds: type.kinds.map((kind) => kindOf(kind).name).join(", "),
  tolerance: type.tolerance === null ? "" : inUnits("mm", "in")(type.tolerance),
  certainty: toldByOthers(type) ? "reported" : "confirmed",
});
