import { closeSync, openSync, readSync } from "node:fs";
import { isMissing } from "#server/export/is-missing.ts";
import { DomainError } from "#shared/errors/refusal.ts";

const BRACE = 0x7b;

/** Whether a file begins as JSON does, so that it is read as a whole record; a list begins with a heading. Throws `file-missing`. */
export function startsAsRecord(file: string): boolean {
  const first = Buffer.alloc(1);
  try {
    const descriptor = openSync(file, "r");
    try {
      readSync(descriptor, first);
    } finally {
      closeSync(descriptor);
    }
  } catch (error) {
    throw isMissing(error) ? new DomainError({ code: "file-missing", args: { file } }) : error;
  }
  return first[0] === BRACE;
}
