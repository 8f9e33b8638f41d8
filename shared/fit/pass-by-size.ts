import { compareInside, weigh } from "#shared/fit/compare-inside.ts";
import { missingFor } from "#shared/fit/missing.ts";
import type { BySize, Comparison, DoubtReason, Limits, Outcome, Passage } from "#shared/fit/passage.ts";
import type { Length } from "#shared/size/length.ts";
import type { Certainty, Fact } from "#shared/tube/certainty.ts";

const width = (comparison: Comparison, extreme: keyof Limits): number =>
  comparison.basis === "closed end hole" ? 0 : comparison.limits[extreme];

/** The first of the narrowest; undefined of none. */
const narrowest = <T extends Comparison>(of: readonly T[], extreme: keyof Limits): T | undefined =>
  of.toSorted((a, b) => width(a, extreme) - width(b, extreme))[0];

/** Of several stops the narrowest with a place: it says where and by how much, a label only that the wire stops. */
const decidingStop = (stops: readonly Comparison[]): Comparison | undefined =>
  narrowest(
    stops.filter(({ basis }) => basis !== "label"),
    "most",
  ) ?? narrowest(stops, "most");

const unsure = (of: "outside" | Comparison["basis"], certainty: Certainty): DoubtReason[] =>
  certainty === "reported" || certainty === "estimated" ? [{ because: "certainty", of, certainty }] : [];

const reasonsFor = (comparison: Comparison, outside: Fact<Length>): DoubtReason[] => [
  ...(comparison.says === "doubt" ? [{ because: "tolerance" } as const] : []),
  ...unsure("outside", outside.certainty),
  ...unsure(comparison.basis, comparison.certainty),
];

/**
 * One thing through another, by recorded sizes alone. The label and every measured bore must let it pass; where they disagree
 * the worse is shown. In this order: a confirmed stop stops, whatever else is unknown; then what is missing; then doubt.
 * French never enters: it is the outside.
 */
export function passageBySize(passage: Passage): BySize {
  const { outside } = passage.goes;
  const missing = missingFor(passage);
  if (outside.certainty === "unknown") return { verdict: "cannot tell", missing, compared: [] };
  const compared = compareInside(outside.value, passage);
  const counting = (outcome: Outcome) => compared.filter((each) => weigh(each, outside) === outcome);
  const size = { outside: outside.value, compared };

  const stop = decidingStop(counting("does not pass"));
  if (stop !== undefined) return { verdict: "does not pass", decides: stop, ...size };
  if (missing.length > 0) return { verdict: "cannot tell", missing, compared };
  const doubt = narrowest(counting("doubt"), "least");
  if (doubt !== undefined) {
    return { verdict: "doubt", decides: doubt, reasons: reasonsFor(doubt, outside), ...size };
  }
  const sized = compared.filter((each) => each.basis !== "closed end hole");
  const way = narrowest(sized, "least");
  return way === undefined
    ? { verdict: "cannot tell", missing: [{ what: "takes or bores" }], compared }
    : { verdict: "passes", decides: way, ...size };
}
