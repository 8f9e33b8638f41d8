import type { ExchangeAnswer, Ready, TractAnswer } from "#shared/fit/exchange-plan.ts";
import type { UpsizeStep } from "#shared/fit/upsize-step.ts";
import type { WireLength, WireLengthSum } from "#shared/fit/wire-length.ts";
import type { BleedingRow } from "#shared/protocol/bleeding-rows.ts";
import type { PlanDoubt } from "#shared/protocol/planning-rows.ts";
import type { ShelfType } from "#shared/shelf/shelf-type.ts";
import type { Length } from "#shared/size/length.ts";
import { printLength } from "#shared/size/print-length.ts";
import { known } from "#shared/tube/certainty.ts";
import type { CheckedOn } from "#shared/tube/exchange-planned.ts";
import { andList } from "#shared/words/and-list.ts";

const cm = (length: Length): string => printLength(length, "cm");
const french = (length: Length): string => printLength(length, "F");

/** "80 cm" or "80 to 90 cm". */
const span = ({ from, to }: { readonly from: Length; readonly to: Length }): string =>
  from === to ? cm(from) : `${printLength(from, "cm").replace(" cm", "")} to ${cm(to)}`;

/** The sum as it is added up: "20 cm inside + 10 to 20 cm beyond the tip + 40 cm longest device + 10 cm to hold". */
const sumWords = ({ inside, beyondTip, device, grip }: WireLengthSum): string =>
  `${cm(inside)} inside + ${span(beyondTip)} beyond the tip + ${cm(device)} longest device + ${cm(grip)} to hold`;

/** "Long enough: 145 cm; needed 80 to 90 cm (...)." */
export function lengthLine(answer: WireLength): string {
  switch (answer.verdict) {
    case "long enough":
      return `Long enough: ${cm(answer.wire)}; needed ${span(answer.sum.needed)} (${sumWords(answer.sum)}).`;
    case "too short":
      return `Too short by ${cm(answer.by)}: ${cm(answer.wire)}; needed ${span(answer.sum.needed)} (${sumWords(answer.sum)}).`;
    case "doubt": {
      const unsure = answer.certainty === "confirmed" ? "" : ` A length in the sum is ${answer.certainty}.`;
      return `Doubt: ${cm(answer.wire)}; needed ${span(answer.sum.needed)} (${sumWords(answer.sum)}).${unsure}`;
    }
    case "external longer than full":
      return `Cannot tell: ${cm(answer.external)} outside is more than its full length of ${cm(answer.full)}. Check both.`;
    case "cannot tell": {
      const record = answer.missing.filter((what) => what !== "row").map((what) => `the ${what}`);
      const parts = [
        ...(record.length > 0 ? [`record ${andList(record)}`] : []),
        ...(answer.missing.includes("row")
          ? ["the clinic's protocol has no row for the length of a wire"]
          : []),
      ];
      return `Cannot tell: ${parts.join("; ")}.`;
    }
  }
}

type Missing = Extract<UpsizeStep, { verdict: "cannot tell" }>["missing"];

function stepMissing(missing: Missing): string {
  const sizes = missing
    .filter((what) => what !== "row")
    .map((what) => what.replace("size", "size of the tube"));
  const parts = [
    ...(sizes.length > 0 ? [`record the ${andList(sizes)}`] : []),
    ...(missing.includes("row") ? ["the clinic's protocol has no row for the step"] : []),
  ];
  return `Cannot tell: ${parts.join("; ")}.`;
}

/** "Step of 4 F, from 8 F to 12 F: over the usual 2 F, not over the 4 F from which the row asks for a note." */
export function stepLine(step: UpsizeStep): string {
  switch (step.verdict) {
    case "cannot tell":
      return stepMissing(step.missing);
    case "no upsize":
      return step.from === step.to
        ? `No step: ${french(step.from)} again.`
        : `No upsize: ${french(step.from)} to ${french(step.to)} is a step down.`;
    case "within the usual step":
      return `${steppedUp(step)}: within the usual ${french(step.usual)} of the row.${unsure(step)}`;
    case "over the usual step":
      return `${steppedUp(step)}: over the usual ${french(step.usual)}, not over the ${french(step.noteOver)} from which the row asks for a note.${unsure(step)}`;
    case "over the step with a note":
      return `${steppedUp(step)}: over ${french(step.noteOver)}, for which the row asks for a note.${unsure(step)}`;
  }
}

type SteppedUp = Extract<UpsizeStep, { by: Length }>;

const steppedUp = ({ by, from, to }: SteppedUp): string =>
  `Step of ${french(by)}, from ${french(from)} to ${french(to)}`;

const unsure = ({ sure }: SteppedUp): string => (sure ? "" : " A size in it is not confirmed.");

const namesOf = (types: readonly ShelfType[]): string => andList(types.map(({ name }) => name));

/** The dilators of the shelf for this step; null where there is no step up. */
export function dilatorLine(dilators: ExchangeAnswer["dilators"]): string | null {
  if (dilators === null) return null;
  const { between, above } = dilators;
  const on =
    between.length === 0 ? "None on the shelf up to the new size" : `On the shelf: ${namesOf(between)}`;
  return `${on}; ${above === null ? "none above it" : `one above: ${above.name}`}.`;
}

const days = (count: number): string => `${count} ${count === 1 ? "day" : "days"}`;

/** The tract on the day of the plan, or on another, against its row; where its age cannot be told, for want of which days. */
export function tractLine(
  { maturity, age, immatureUnder }: TractAnswer,
  unknown: readonly string[] = ["the day of the puncture"],
): string {
  const old = age === null ? "Age of the tract unknown" : `Tract at least ${days(age)} old`;
  const lost = "If access is lost this becomes a new puncture.";
  switch (maturity) {
    case "immature":
      return `Immature tract: ${old.toLowerCase()}, under the ${days(immatureUnder ?? 0)} of the row. ${lost}`;
    case "neither":
      return `${old}: past the ${days(immatureUnder ?? 0)} under which the row calls it immature, not yet the age from which it calls it mature. ${lost}`;
    case "mature":
      return `${old}: mature by the row.`;
    case "no row":
      return `${old}. The clinic's protocol has no row for when this tract is mature: cannot tell. ${lost}`;
    case "cannot tell":
      return `Cannot tell whether the tract is mature: ${andList(unknown)} ${unknown.length === 1 ? "is" : "are"} unknown; the row asks for ${days(immatureUnder ?? 0)}. ${lost}`;
  }
}

/** "Class low (exchange of a nephrostomy tube): INR at most 2 to 3, platelets at least 20 x 10^9/L (source 14)." */
export function bleedingLine({
  class: risk,
  acts,
  inrAtMost,
  plateletsAtLeast,
  labs,
  source,
}: BleedingRow): string {
  const done = acts.map(({ act }) => act).join(", ");
  const inr = `INR at most ${inrAtMost.from} to ${inrAtMost.to}`;
  return `Class ${risk} (${done}): ${inr}, platelets at least ${plateletsAtLeast} x 10⁹/L${labs === null ? "" : `, ${labs}`} (source ${source}).`;
}

/** How what holds the old tube is let go, by the clinic's list. */
export function releaseLines({
  release,
  notOverWire,
}: Pick<ExchangeAnswer, "release" | "notOverWire">): string[] {
  const kind = notOverWire === null ? [] : [`Not exchanged over a wire from the skin: ${notOverWire.says}.`];
  if (release === "retention unknown")
    return [...kind, "What holds the tube in place is unknown: cannot tell how it is let go. Record it."];
  if (release === "no row") return [...kind, "The clinic's list has no row for how this is let go."];
  const out = release.comesOut === null ? [] : [`Must come out with it: ${release.comesOut}.`];
  return [...kind, `Let go: ${release.says}.`, ...out];
}

function sizeReady(which: string, { size, types }: Ready["below"]): string {
  if (size === null) return `The size ${which}: cannot tell, the size to come is unknown or there is no row.`;
  const has = types.length === 0 ? "none on the shelf" : namesOf(types);
  return `The size ${which}, ${french(size)}: ${has}.`;
}

/** What is kept ready beside the planned tube. */
export const readyLines = ({ below, above }: Ready): string[] => [
  sizeReady("below", below),
  sizeReady("above", above),
];

export const doubtWords = {
  "does not pass": "something does not pass",
  "wire too short": "the wire is too short",
  "step over the note": "the step is over that of the row",
  "immature tract": "the tract is immature",
  "cannot tell": "something cannot be told",
  doubt: "something is in doubt",
} as const satisfies Record<PlanDoubt, string>;

const factNames = {
  size: "size",
  takes: "what wire it takes",
  bores: "insides",
  endHole: "end hole",
  concerns: "state",
  fullLength: "full length",
  externalLength: "external length",
  retention: "what holds it",
} as const satisfies Record<keyof CheckedOn, string>;

/** Said of a plan whose tube is recorded otherwise now; null where nothing changed. */
export const changedLine = (changed: readonly (keyof CheckedOn)[]): string | null =>
  changed.length === 0
    ? null
    : `This plan was checked on other facts of the tube in place. Changed since: ${andList(changed.map((fact) => factNames[fact]))}. Below is how it stands now; plan it again to keep that.`;

/** "Wire: Standard 0.035, 145 cm" of what is planned with, for a list on paper. */
export const outsideWords = (type: Pick<ShelfType, "outside" | "sort">): string => {
  const size = known(type.outside);
  return size === undefined ? "size unknown" : printLength(size, type.sort === "wire" ? "in" : "F");
};
