import { BYTE_ORDER_MARK, csvLine } from "#server/export/csv/csv-table.ts";
import type { Protocol } from "#shared/protocol/protocol.ts";
import { fileColumns, fileLines } from "#shared/protocol/rows/file-lines.ts";

/** The rows of a version as a file (CSV by RFC 4180): one leaf a line, in the columns row, called, figure and value. */
export function writeProtocolFile(protocol: Protocol): string {
  const lines = fileLines(protocol).map((line) => csvLine(fileColumns.map((column) => line[column])));
  return [BYTE_ORDER_MARK, csvLine(fileColumns), ...lines].join("");
}
