import { shutModes } from "#shared/output/low-day.ts";
import type { NetDay } from "#shared/output/net-day.ts";
import type { LowRow } from "#shared/output/trend/if-unchanged.ts";
import { type Trend, trendOf } from "#shared/output/trend/trend.ts";
import type { Mode, Role } from "#shared/tube/vocabulary.ts";

/** `does not apply`: with this role or mode net by day is no measure, so nothing is computed of it. */
export type TrendOfTube =
  | Trend
  | { readonly kind: "does not apply"; readonly because: "role" | "mode" | "sessions" };

export type TrendRule = { readonly role: Role; readonly mode: Mode; readonly row: LowRow };

/** Tubes whose net a day says something of them. */
const byDay: readonly Role[] = ["collection", "drains an organ", "air and fluid", "venting"];

/** The trend of a tube by its role and mode. Only of a collection does a row ask for low output: no other tube gets a span. */
export function trendOfTube(days: readonly NetDay[], { role, mode, row }: TrendRule): TrendOfTube {
  if (role === "intermittent") return { kind: "does not apply", because: "sessions" };
  if (!byDay.includes(role)) return { kind: "does not apply", because: "role" };
  if (shutModes.includes(mode)) return { kind: "does not apply", because: "mode" };
  return trendOf(days, role === "collection" ? row : null);
}
