import type { DayRemark, IncompleteReason, NetDay } from "#shared/output/net-day.ts";
import type { Protocol } from "#shared/protocol/protocol.ts";
import type { Mode, Role } from "#shared/tube/vocabulary.ts";

/**
 * Whether a day is low in the sense of a removal review. `does not apply`: for this role or mode volume is no sign at all. Low
 * means only that this number was met.
 */
export type LowDay =
  | { readonly kind: "low" | "not low" }
  | { readonly kind: "cannot tell"; readonly because: readonly (IncompleteReason | DayRemark)[] }
  | { readonly kind: "does not apply"; readonly because: "role" | "mode" };

export type LowDayRule = {
  readonly role: Role;
  readonly mode: Mode;
  readonly row: Pick<Protocol["output"], "lowNetMl">;
};

/** A low figure beside any of these is not known to be low: fluid went elsewhere, or nobody measured. */
export const voidsLow: readonly DayRemark[] = ["flush-does-not-come-back", "leak-round-tube", "estimated"];
/** Set to let nothing out: zero is what they show, and mean to. */
export const shutModes: readonly Mode[] = ["capped", "clamped", "on a clamp trial"];

/** A day against the row for low output, in mL/24 h, keyed on role and mode. */
export function lowDay(day: NetDay, { role, mode, row }: LowDayRule): LowDay {
  if (role !== "collection") return { kind: "does not apply", because: "role" };
  if (shutModes.includes(mode)) return { kind: "does not apply", because: "mode" };
  return lowFigure(day, row.lowNetMl);
}

type Figure = Pick<NetDay, "complete" | "net" | "because" | "remarks">;

/** A day's figure against a limit in mL/24 h. Low is under the limit, not at it. */
export function lowFigure(day: Figure, underMl: number): Exclude<LowDay, { kind: "does not apply" }> {
  if (!day.complete || day.net.kind !== "known") return { kind: "cannot tell", because: day.because };
  if (day.net.mlPer24h >= underMl) return { kind: "not low" };
  const because = day.remarks.filter((remark) => voidsLow.includes(remark));
  return because.length > 0 ? { kind: "cannot tell", because } : { kind: "low" };
}
