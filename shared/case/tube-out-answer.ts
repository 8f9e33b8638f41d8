import { thatMayBeOut } from "#shared/call/that-may-be-out.ts";
import { rowSays, tractOut } from "#shared/call/tube-out.ts";
import type { Given } from "#shared/case/case-schema.ts";
import type { Json } from "#shared/case/json.ts";
import type { Looking } from "#shared/case/looking.ts";
import { dayOf } from "#shared/case/telling.ts";
import { printLength } from "#shared/size/print-length.ts";
import type { TubeState } from "#shared/tube/state.ts";
import { sizesLine, slowLine, tractOutLine } from "#shared/words/tube-out.ts";

/** What stands beside the record of a tube that is out: its tract on that day, what the row says of it, the red flag, the sizes. */
export function tubeOutAnswer(
  given: Given<"tube-out">,
  { state, books, protocol, today }: Looking,
  tube: TubeState,
): Json {
  const [one] = thatMayBeOut(tube, { state, books, newest: protocol });
  if (one === undefined) return null;
  const on = given.since === undefined ? today : dayOf(given, given.since);
  const stands = tractOut(one.tract, on);
  const row = one.rows[given.out];
  const said = row === null ? null : rowSays(row, stands);
  return {
    age: stands.age,
    maturity: stands.maturity,
    shownFirst: stands.first,
    tract: tractOutLine(stands, one.tract),
    slow: { yes: [...one.slow.yes], unknown: [...one.slow.unknown], says: slowLine(one.slow) },
    row: row?.id ?? null,
    says: said?.says ?? null,
    ifMature: said?.ifMature ?? null,
    untilReached: row?.untilReached ?? null,
    redFlag: one.flag === null ? null : { row: one.flag.id, level: one.flag.level },
    below: one.below === null ? null : printLength(one.below, "F"),
    sizes: sizesLine(one),
    bleeding: (protocol.bleeding?.rows ?? []).map((risk) => risk.class),
  };
}
