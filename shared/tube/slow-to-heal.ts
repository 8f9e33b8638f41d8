import { isTrue } from "#shared/tube/open-record.ts";
import type { Conditions } from "#shared/tube/payloads.ts";

/** What slows a tract. */
export const slowing = ["ascites", "steroids", "malnutrition", "diabetes", "chemotherapy"] as const;
export type Slowing = (typeof slowing)[number];

/** What of it this patient has, and of what nobody has said whether. */
export const slowToHeal = (
  conditions: Conditions,
): { readonly yes: readonly Slowing[]; readonly unknown: readonly Slowing[] } => ({
  yes: slowing.filter((name) => isTrue(conditions[name])),
  unknown: slowing.filter((name) => (conditions[name]?.certainty ?? "unknown") === "unknown"),
});
