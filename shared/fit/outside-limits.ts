import type { Goes, PassageRows } from "#shared/fit/passage.ts";
import type { Length } from "#shared/size/length.ts";
import { statedAs } from "#shared/size/stated-size.ts";

/** What an outside may measure, and the tolerance that was counted with. */
export type OutsideLimits = {
  readonly least: Length;
  readonly most: Length;
  readonly tolerance: Length;
  readonly from: "recorded" | "row";
};

/** The tolerance that an outside counts with: its own, else the row's; undefined where there is neither. */
export const outsideTolerance = ({ as, tolerance }: Goes, rows: PassageRows): Length | undefined =>
  tolerance ?? rows.outsideTolerance[as];

/**
 * A tolerance of its own stands about the recorded size. The row's stands about the size as a package states it: of a device rounded up
 * to 0.1 mm (ISO 20696:2018, 5.5.2), of a wire as it is. Undefined where there is no tolerance.
 */
export function outsideLimits(outside: Length, goes: Goes, rows: PassageRows): OutsideLimits | undefined {
  const tolerance = outsideTolerance(goes, rows);
  if (tolerance === undefined) return undefined;
  const rounded = goes.tolerance === null && goes.as === "device";
  const stated = rounded ? statedAs(outside) : outside;
  return {
    least: Math.max(0, stated - tolerance) as Length,
    most: (stated + tolerance) as Length,
    tolerance,
    from: goes.tolerance === null ? "row" : "recorded",
  };
}
