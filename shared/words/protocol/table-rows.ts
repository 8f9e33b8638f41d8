import type { Protocol } from "#shared/protocol/protocol.ts";
import { otherRows, type RowGroup } from "#shared/words/protocol/other-rows.ts";
import { rowName, rowPathsIn } from "#shared/words/protocol/row-names.ts";
import { NO_ROW, type RowWords } from "#shared/words/protocol/row-words.ts";

/** Each row of a group that has none, so that each can be filled; what has a line of its own elsewhere is not told again. */
function eachOfGroup(line: RowWords, told: ReadonlySet<string>): readonly RowWords[] {
  const paths = rowPathsIn(line.address).filter((path) => !told.has(path));
  return paths.length === 0
    ? [line]
    : paths.map((path) => ({ word: rowName(path), says: NO_ROW, address: path }));
}

/** Every row that is no interval and that a version has or could have, in the tables of the page Protocol, each with its address. */
export function tableRows(protocol: Protocol): readonly RowGroup[] {
  const groups = otherRows(protocol);
  const told = new Set(groups.flatMap(({ rows }) => rows.map(({ address }) => address)));
  return groups.map(({ head, rows }) => ({ head, rows: rows.flatMap((line) => eachOfGroup(line, told)) }));
}
