import { closeSync, openSync, readSync } from "node:fs";
import { isMissing } from "#server/export/is-missing.ts";
import { DomainError } from "#shared/errors/refusal.ts";

const PIECE = 1 << 16;
/** Longer than any row, shorter than what fills the memory. */
const LONGEST_LINE = 1 << 22;
const LINE_FEED = 0x0a;

function opened(file: string): number {
  try {
    return openSync(file, "r");
  } catch (error) {
    throw isMissing(error) ? new DomainError({ code: "file-missing", args: { file } }) : error;
  }
}

/** The text of a line without its end; null where the bytes are no UTF-8. */
function textOf(line: Buffer): string | null {
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(line).replace(/\r$/, "");
  } catch {
    return null;
  }
}

/**
 * The lines of a file, read in pieces. Null stands for a line that is no UTF-8 text, and ends a file whose line does not end. Throws
 * `file-missing`.
 */
export function* fileLines(file: string): Generator<string | null> {
  const descriptor = opened(file);
  try {
    let rest = Buffer.alloc(0);
    const piece = Buffer.alloc(PIECE);
    for (let length = readSync(descriptor, piece); length > 0; length = readSync(descriptor, piece)) {
      rest = Buffer.concat([rest, piece.subarray(0, length)]);
      let start = 0;
      for (let end = rest.indexOf(LINE_FEED); end !== -1; end = rest.indexOf(LINE_FEED, start)) {
        yield textOf(rest.subarray(start, end));
        start = end + 1;
      }
      rest = rest.subarray(start);
      if (rest.length > LONGEST_LINE) {
        yield null;
        return;
      }
    }
    if (rest.length > 0) yield textOf(rest);
  } catch (error) {
    throw isMissing(error) ? new DomainError({ code: "file-missing", args: { file } }) : error;
  } finally {
    closeSync(descriptor);
  }
}
