import type { Comparison, Outcome } from "#shared/fit/passage.ts";

const severity = { passes: 0, doubt: 1, "does not pass": 2 } as const satisfies Record<Outcome, number>;

/**
 * Label and measured inside contradict each other: the inside is worse than the label says, or the label is worse than an inside
 * that is measured to the tip. Figures alone, however well known.
 */
export function labelDisagrees(compared: readonly Comparison[]): boolean {
  const label = compared.find((each) => each.basis === "label");
  const inside = compared.filter((each) => each.basis !== "label");
  if (label === undefined || inside.length === 0) return false;
  const worst = Math.max(...inside.map((each) => severity[each.says]));
  const toTheTip = inside.some((each) => each.basis === "bore" && each.place === "end hole");
  return worst > severity[label.says] || (toTheTip && worst < severity[label.says]);
}
