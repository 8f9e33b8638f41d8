import type { Protocol } from "#shared/protocol/protocol.ts";
import type { TubeOutRow } from "#shared/protocol/tube-out-rows.ts";
import type { TubeKind } from "#shared/tube/kind/kinds.ts";

/** What the table shows when a tube of a kind is out or pulled back; undefined is "no row". Shown, not decided. */
export const tubeOutRow = (
  { tubeOut }: Pick<Protocol, "tubeOut">,
  kind: TubeKind,
  out: TubeOutRow["out"],
): TubeOutRow | undefined =>
  tubeOut.find((row) => row.out === out && (row.kinds.length === 0 || row.kinds.includes(kind)));
