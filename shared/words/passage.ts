import type { Place, StateConcern } from "#shared/fit/inside.ts";
import { labelDisagrees } from "#shared/fit/label-disagrees.ts";
import type {
  BoreComparison,
  BySize,
  ByState,
  Comparison,
  DoubtReason,
  Gap,
  GoesAs,
  Missing,
} from "#shared/fit/passage.ts";
import type { Length } from "#shared/size/length.ts";
import { printBoth, printLength } from "#shared/size/print-length.ts";
import { andList } from "#shared/words/and-list.ts";

/** What goes through, as the sentences name it, and through what; a tube unless it is said. */
export type Named = { readonly name: string; readonly as: GoesAs; readonly through?: string };

export const WIRE: Named = { name: "wire", as: "wire" };

const one = (name: string): string => (/^[aeiou]/.test(name) ? `an ${name}` : `a ${name}`);

/** A wire is told in inches, any other device in French. */
const sized = (length: Length, { as }: Named): string =>
  as === "wire" ? printLength(length, "in") : printBoth(length, "F", "mm");

/** Differences are told in inches; millimetres stand beside them. */
const both = (length: number): string => printBoth(length as Length, "in", "mm");

const at = {
  stopcock: "the stopcock",
  hub: "the hub",
  valve: "the valve",
  shaft: "the shaft",
  "end hole": "the end hole",
} as const satisfies Record<Place, string>;

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

function gapWords(gap: Gap): string {
  if (gap.is === "too thick") return `is ${both(gap.by)} too thick`;
  return gap.by === 0 ? "has no room to spare" : `has ${both(gap.by)} of room`;
}

/** Bore and wire as recorded, or, where only the clearance stops it, what the row asks for. */
function boreWords({ place, gap, says, clearance }: BoreComparison, { name }: Named): string {
  const found = `at ${at[place]} the ${name} ${gapWords(gap)}`;
  return says === "does not pass" && gap.is === "room"
    ? `${found}; the clinic's row asks for ${both(clearance)}`
    : found;
}

function figures(decides: Comparison, outside: Length, named: Named): string {
  switch (decides.basis) {
    case "label":
      return `labelled for ${sized(decides.limits.most, named)}; the ${named.name} is ${sized(outside, named)}`;
    case "bore":
      return boreWords(decides, named);
    case "closed end hole":
      return `the end hole is closed, so no ${named.name} comes out of the tip`;
  }
}

/** Both ends of a tolerance, the clearance counted in. */
function extremes(decides: Comparison, outside: Length, named: Named): string {
  if (decides.basis !== "bore") return figures(decides, outside, named);
  const { place, limits } = decides;
  const room = limits.most - outside;
  const best = room === 0 ? "no room to spare" : `${both(room)} of room`;
  return `at ${at[place]} the tolerance leaves it open, from ${both(outside - limits.least)} too thick to ${best}`;
}

const doubtful = {
  label: "what the label says",
  bore: "the bore",
  "closed end hole": "that the end hole is closed",
} as const satisfies Record<Comparison["basis"], string>;

const unsure = (reasons: readonly DoubtReason[], { name }: Named): string =>
  reasons
    .filter((reason) => reason.because === "certainty")
    .map(
      (reason) =>
        ` ${capital(reason.of === "outside" ? `the ${name}'s size` : doubtful[reason.of])} is ${reason.certainty}, not confirmed.`,
    )
    .join("");

function missingWords(missing: readonly Missing[], { name, through = "tube" }: Named): string {
  const places = missing.flatMap((each) => (each.what === "bore" ? [at[each.place]] : []));
  const has = (what: Missing["what"]) => missing.some((each) => each.what === what);
  const record = [
    ...(has("outside") ? [`the size of the ${name}`] : []),
    ...(has("takes or bores") ? [`what ${name} the ${through} takes, or its bores`] : []),
    ...(places.length > 0 ? [`what ${name} the ${through} takes, or its inside at ${andList(places)}`] : []),
  ];
  const rows = [
    ...(has("clearance row") ? [`the clearance of ${one(name)} in a measured bore`] : []),
    ...(has("tolerance row") ? ["the tolerance of a bore given without one"] : []),
    ...(has("outside tolerance row") ? [`the tolerance of the outside of ${one(name)}`] : []),
  ];
  return [
    ...(record.length > 0 ? [`record ${record.join("; and ")}`] : []),
    ...(rows.length > 0 ? [`the clinic's protocol has no row for ${andList(rows)}`] : []),
  ].join("; ");
}

const opening = {
  passes: "Passes by recorded sizes",
  "does not pass": "Does not pass",
  doubt: "Doubt",
  "cannot tell": "Cannot tell",
} as const satisfies Record<BySize["verdict"], string>;

function sizeSays(bySize: BySize, named: Named): string {
  switch (bySize.verdict) {
    case "passes":
    case "does not pass":
      return `${figures(bySize.decides, bySize.outside, named)}.`;
    case "doubt": {
      const { decides, outside, reasons } = bySize;
      const found =
        decides.says === "doubt" ? extremes(decides, outside, named) : figures(decides, outside, named);
      return `${found}.${unsure(reasons, named)}`;
    }
    case "cannot tell":
      return `${missingWords(bySize.missing, named)}.`;
  }
}

/**
 * The first line of a passage: "Does not pass: at the end hole the wire is 0.003 in (0.076 mm) too thick." `which` names it where
 * there are several.
 */
export const sizeLine = (bySize: BySize, named: Named = WIRE, which = ""): string =>
  `${opening[bySize.verdict]}: ${which === "" ? "" : `${which}: `}${sizeSays(bySize, named)}`;

/** What the outside may be off by, where it counts. */
function outsideOff({ outsideTolerance, outsideToleranceFrom }: BoreComparison, { name }: Named): string {
  if (outsideTolerance === 0) return "";
  const from = outsideToleranceFrom === "row" ? " (the clinic's row)" : "";
  return `; the ${name} itself ${both(outsideTolerance)} more or less${from}`;
}

function ground(each: Comparison, named: Named): string {
  switch (each.basis) {
    case "label":
      return `Label: takes up to ${named.as === "wire" ? both(each.limits.most) : sized(each.limits.most, named)}, ${each.certainty}.`;
    case "bore": {
      const from = each.toleranceFrom === "row" ? " (the clinic's row)" : "";
      return (
        `${capital(at[each.place])}: inside ${both(each.inside)}, ${each.certainty}; ` +
        `tolerance ${both(each.tolerance)}${from}; clearance ${both(each.clearance)}` +
        `${outsideOff(each, named)}.`
      );
    }
    case "closed end hole":
      return `The end hole: closed, ${each.certainty}.`;
  }
}

/** The arithmetic behind the line, a sentence a fact: what was held against what goes through, and what was counted in. */
export const sizeGrounds = ({ compared }: BySize, named: Named = WIRE): string[] => [
  ...compared.map((each) => ground(each, named)),
  ...(labelDisagrees(compared) ? ["Label and inside disagree: the worse is shown."] : []),
];

const concernWords = {
  crusted: "crusted",
  "hard to flush": "hard to flush",
  "past latest date": "past its latest date",
  "string knotted or retained": "string knotted or retained",
  "last exchange difficult": "the last exchange was difficult",
} as const satisfies Record<StateConcern, string>;

/** The second line: "In doubt by state: crusted." An empty record says nothing for the tube. */
export function stateLine(byState: ByState): string {
  switch (byState.state) {
    case "in doubt":
      return `In doubt by state: ${byState.concerns.map((concern) => concernWords[concern]).join(", ")}.`;
    case "nothing recorded as present":
      return "State: nothing recorded.";
    case "not recorded":
      return "State: not recorded.";
  }
}
