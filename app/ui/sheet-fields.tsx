import type { ReactNode } from "react";
import { Field } from "#app/ui/field.tsx";
import { encodings } from "#shared/sheet/encoding.ts";

const letters = [
  { value: "", label: "Found by themselves" },
  ...encodings.map((value) => ({ value, label: value })),
];

type SheetFieldsProps = {
  readonly problemOf: (field: string) => string | undefined;
};

/** A sheet as a file or as pasted rows, and the letters of the file. */
export const SheetFields = ({ problemOf }: SheetFieldsProps): ReactNode => (
  <>
    <Field
      name="file"
      label="File"
      hint="CSV or text, as a spreadsheet saves it; commas, semicolons or tabs"
      problem={problemOf("file")}
      control={{ type: "file", accept: ".csv,.txt,.tsv,text/csv,text/plain" }}
    />
    <Field
      name="pasted"
      label="Or paste rows"
      hint="copied from the spreadsheet, the line of headings with them"
      long
      problem={problemOf("pasted")}
      control={{ rows: 6 }}
    />
    <Field
      name="encoding"
      label="Letters of the file"
      hint="choose only if names come out wrong"
      choices={letters}
    />
  </>
);
