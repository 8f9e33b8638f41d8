import { rowSays, type TractOut } from "#shared/call/tube-out.ts";
import type { TubeOutRow } from "#shared/protocol/tube-out-rows.ts";
import type { TubeThatMayBeOut } from "#shared/record/call/out-context.ts";
import { printLength } from "#shared/size/print-length.ts";
import { slowing } from "#shared/tube/slow-to-heal.ts";
import { andList } from "#shared/words/and-list.ts";
import { tractLine } from "#shared/words/exchange-plan.ts";

const unknownDay: Readonly<Record<TractOut["unknown"][number], string>> = {
  puncture: "the day of the puncture",
  out: "the day on which the tube came out",
};

/** How old the tract is on the day on which its tube came out, against the ages of its row. */
export const tractOutLine = (
  { maturity, age, unknown }: TractOut,
  { ages }: Pick<TubeThatMayBeOut["tract"], "ages">,
): string =>
  tractLine(
    { maturity, age, immatureUnder: ages?.immatureUnder ?? null, bleeding: [], asks: null },
    unknown.map((which) => unknownDay[which]),
  );

/** What slows a tract that this patient has, and what of it nobody knows. */
export function slowLine({ yes, unknown }: TubeThatMayBeOut["slow"]): string {
  if (yes.length === 0 && unknown.length === 0)
    return `Nothing slows the tract: no ${slowing.join(", no ")}.`;
  return [
    yes.length > 0 && `Slow to heal: ${andList(yes)}.`,
    unknown.length > 0 && `Not known, so ask: ${andList(unknown)}.`,
  ]
    .filter((line) => line !== false)
    .join(" ");
}

/** What the row of a tube that is out says, of an immature tract first wherever it cannot be called mature. Shown, not decided. */
export function outRowLines(
  row: TubeOutRow | null,
  stands: Pick<TractOut, "maturity" | "first">,
): readonly string[] {
  if (row === null) return ["The clinic's table has no row for it: the local on-call route decides."];
  const { says, ifMature } = rowSays(row, stands);
  const which = stands.first === "mature" ? "Of a mature tract" : "Of an immature tract";
  const lines = [`${row.out === "part out" ? "Partly out" : which}: ${says} (source ${row.source}).`];
  return ifMature === null ? lines : [...lines, `If the tract were mature: ${ifMature}.`];
}

/** The size that was in, and one usual step below it: what may have to be at hand. */
export function sizesLine({ size, below }: Pick<TubeThatMayBeOut, "size" | "below">): string {
  if (size.certainty === "unknown") return "Size that was in: cannot tell, it is not known.";
  const about = size.certainty === "confirmed" ? "" : ` (${size.certainty})`;
  const step =
    below === null ? "one step below: cannot tell" : `one usual step below: ${printLength(below, "F")}`;
  return `Size that was in: ${printLength(size.value, "F")}${about}; ${step}.`;
}
