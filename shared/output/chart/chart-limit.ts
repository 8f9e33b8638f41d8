import { shutModes } from "#shared/output/low-day.ts";
import { lowRowOf } from "#shared/output/low-row.ts";
import type { Protocol } from "#shared/protocol/protocol.ts";
import type { TubeState } from "#shared/tube/state.ts";

/** A line of the clinic's table, in mL/24 h: under it a day of a collection is low, under it a tube of an organ is an alarm. */
export type ChartLimit = { readonly means: "low day" | "alarm"; readonly underMl: number };

/** The row that a tube's bars are held against; null where none speaks of it, and while it is shut. */
export function chartLimit(
  { kind, role, mode }: Pick<TubeState, "kind" | "role" | "mode">,
  protocol: Pick<Protocol, "output" | "outputRows">,
): ChartLimit | null {
  if (shutModes.includes(mode)) return null;
  if (role === "collection") return { means: "low day", underMl: lowRowOf(kind, protocol).lowNetMl };
  if (role !== "drains an organ") return null;
  const underMl = protocol.outputRows?.low.find(({ kinds }) => kinds.includes(kind))?.underMlPer24h ?? null;
  return underMl === null ? null : { means: "alarm", underMl };
}
