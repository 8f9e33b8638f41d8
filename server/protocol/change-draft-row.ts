import { changeDraft } from "#server/protocol/draft.ts";
import type { Doing } from "#server/record/record-event.ts";
import { DomainError } from "#shared/errors/refusal.ts";
import type { Protocol } from "#shared/protocol/protocol.ts";
import { changeRow, dropRow, type RowChange } from "#shared/protocol/rows/change-row.ts";
import type { ChangingDraftRow, DroppingDraftRow, NotingDraft } from "#shared/record/act.ts";
import type { NoteContext } from "#shared/record/protocol/note-form.ts";
import { draftNoteForm } from "#shared/record/protocol/note-form.ts";

/** `address` is where the row stands in the draft from now on; null where it is no row. */
export type ChangedDraft = { readonly revision: number; readonly address: string | null };

const taken = (result: RowChange): Extract<RowChange, { readonly ok: true }> => {
  if (!result.ok) throw new DomainError(result.refusals);
  return result;
};

type RowAct = Pick<ChangingDraftRow, "actId" | "revision" | "address">;

function inDraft(
  doing: Doing,
  input: RowAct,
  change: (protocol: Protocol, address: string) => RowChange,
): ChangedDraft {
  const { actId, revision, address } = input;
  // An act that is sent again changes nothing: its row then stands where it was asked for.
  let stands: string | null = address;
  const changed = changeDraft(doing, {
    actId,
    revision,
    input,
    change: (protocol) => {
      const result = taken(change(protocol, address));
      stands = result.address;
      return result.protocol;
    },
  });
  return { ...changed, address: stands };
}

/** Changes one row of the draft as it was typed, or adds one; begins a draft where there is none. Throws what `changeRow` refuses, `draft-changed`. */
export const changeDraftRow = (doing: Doing, input: ChangingDraftRow): ChangedDraft =>
  inDraft(doing, input, (protocol, address) => changeRow(protocol, address, input.texts));

/** Takes one row out of the draft: out of its list, or "no row". Throws what `dropRow` refuses, `draft-changed`. */
export const dropDraftRow = (doing: Doing, input: DroppingDraftRow): ChangedDraft =>
  inDraft(doing, input, dropRow);

/** Says why the table changes. Throws `draft-changed`, `text-too-long`. */
export function noteDraft(doing: Doing, input: NotingDraft): { readonly revision: number } {
  const { actId, revision, texts } = input;
  const context: NoteContext = { note: "" };
  const read = draftNoteForm.read(texts, context);
  if (!read.ok) throw new DomainError(read.refusals);
  return changeDraft(doing, {
    actId,
    revision,
    input,
    change: (protocol) => protocol,
    note: read.entry.note,
  });
}
