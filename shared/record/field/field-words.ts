import type { FieldSpec } from "#shared/record/field-spec.ts";

/** What a form says of a field beside how it is read. */
export type FieldWords = Pick<FieldSpec<never>, "label" | "hint" | "initial" | "detail">;
