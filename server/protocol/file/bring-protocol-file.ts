import type { Database } from "#db/sqlite.ts";
import { changeDraft, openDraft, standingProtocol } from "#server/protocol/draft.ts";
import { readProtocolFile } from "#server/protocol/file/read-protocol-file.ts";
import { writeProtocolFile } from "#server/protocol/file/write-protocol-file.ts";
import type { Doing } from "#server/record/record-event.ts";
import { refusalSentence } from "#shared/words/refusals.ts";

export type BringingFile = {
  readonly actId: string;
  readonly revision: number;
  readonly bytes: Uint8Array;
};

/** What is to mend in the file, in the order of its lines; null is the whole file. */
export type FileProblem = {
  readonly line: number | null;
  readonly row: string | null;
  readonly sentence: string;
};

export type BroughtFile =
  | { readonly ok: true; readonly revision: number }
  | { readonly ok: false; readonly problems: readonly FileProblem[] };

const headOf = (db: Database) => openDraft(db)?.protocol ?? standingProtocol(db);

/**
 * The rows of a file in place of those of the draft, all of them or none; a draft is begun where there is none. What is to mend comes back
 * line by line. Throws `draft-changed`.
 */
export function bringProtocolFile(doing: Doing, { actId, revision, bytes }: BringingFile): BroughtFile {
  const read = readProtocolFile(bytes, headOf(doing.db));
  if (!read.ok) {
    const problems = read.errors.map(({ line, row, refusal }) => ({
      line,
      row,
      sentence: refusalSentence(refusal),
    }));
    return { ok: false, problems };
  }
  const { version: _version, approved: _approved, ...rows } = read.protocol;
  const change = changeDraft(doing, {
    actId,
    revision,
    input: { actId, revision, rows },
    change: ({ version, approved }) => ({ ...rows, version, approved }),
  });
  return { ok: true, ...change };
}

/** The draft as a file, or what stands where there is none. */
export const draftFile = (db: Database): string => writeProtocolFile(headOf(db));
