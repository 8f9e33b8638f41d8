import { noteField } from "#shared/record/field/text-field.ts";
import { form } from "#shared/record/form.ts";

/** The note as it stands, "" where there is none. */
export type NoteContext = { readonly note: string };

/** Say why the table is drafted otherwise: it stays with the version that an approver signs. */
export const draftNoteForm = form({
  fields: ({ note }: NoteContext) => ({
    note: {
      ...noteField({
        label: "Why the table changes",
        hint: "stays with the version that is signed",
        initial: note,
      }),
    },
  }),
  entry: ({ note }) => ({ note: note ?? "" }),
});
