import type { Refusal } from "#shared/errors/refusal.ts";
import { type Protocol, protocolSchema } from "#shared/protocol/protocol.ts";
import type { RowData } from "#shared/protocol/rows/leaves.ts";
import { addressAt, type Place, placeAt, standingRows, withRow } from "#shared/protocol/rows/place-row.ts";
import { readRow } from "#shared/protocol/rows/read-row.ts";
import { newNonsense, senseOf } from "#shared/protocol/rows/sense.ts";
import type { Texts } from "#shared/record/field-spec.ts";
import { rowName } from "#shared/words/protocol/row-names.ts";

/** `address` is where the row stands now; null where none is left. */
export type RowChange =
  | { readonly ok: true; readonly protocol: Protocol; readonly address: string | null }
  | { readonly ok: false; readonly refusals: readonly Refusal[] };

/**
 * What now speaks against the row that was changed, beside its leaf, or else against others that did stand, without a leaf of this form:
 * where two rows speak against one another, the one that is typed has a field for it.
 */
function refusalsOf(was: Protocol, is: Protocol, address: string | null): readonly Refusal[] {
  const own = senseOf(is).filter((each) => each.address === address);
  if (own.length > 0) return own.map(({ refusal }) => refusal);
  return newNonsense(was, is).map(({ refusal: { code, args } }) => ({ code, ...(args && { args }) }));
}

function changed(was: Protocol, found: Place, row: RowData | null): RowChange {
  const read = protocolSchema.safeParse(withRow(was, found, row));
  if (!read.success) return { ok: false, refusals: [{ code: "entry-not-understood" }] };
  const { sort, place } = found;
  const stands = row === null ? undefined : standingRows(read.data, sort)[place];
  const address = stands === undefined ? null : addressAt(sort, stands, place);
  const refusals = refusalsOf(was, read.data, address);
  return refusals.length > 0 ? { ok: false, refusals } : { ok: true, protocol: read.data, address };
}

/**
 * A version with one row as it was typed: texts by the path of their leaf (rows-of.ts). At the path of a list the row is added; all blank
 * takes it out. Refused with the leaf as the field: what cannot be read, what is out of order, what another row says already.
 */
export function changeRow(protocol: Protocol, address: string, texts: Texts): RowChange {
  const found = placeAt(protocol, address);
  if (found === null) return { ok: false, refusals: [{ code: "row-unknown", args: { text: address } }] };
  const reading = readRow(found.sort, texts);
  switch (reading.read) {
    case "refused":
      return { ok: false, refusals: reading.refusals };
    case "none":
      return changed(protocol, found, null);
    case "row":
      return changed(protocol, found, reading.row);
  }
}

/** A version without the row: out of its list, or "no row". A row that the table cannot do without is refused. */
export function dropRow(protocol: Protocol, address: string): RowChange {
  const sort = placeAt(protocol, address)?.sort;
  if (sort !== undefined && !sort.mayBeNone)
    return { ok: false, refusals: [{ code: "row-cannot-be-none", args: { row: rowName(sort.path) } }] };
  return changeRow(protocol, address, {});
}
