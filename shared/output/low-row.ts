import type { Protocol } from "#shared/protocol/protocol.ts";
import type { TubeKind } from "#shared/tube/kind/kinds.ts";

/** The clinic's row for a low net day of this kind: its own where the table has one, else the general one. */
export const lowRowOf = (
  kind: TubeKind,
  { output, outputRows }: Pick<Protocol, "output" | "outputRows">,
): Pick<Protocol["output"], "lowNetMl" | "lowDays" | "source"> =>
  outputRows?.lowNetInstead.find(({ kinds }) => kinds.includes(kind)) ?? output;
