import { type Parsed, parsed } from "#shared/errors/refusal.ts";
import type { FieldSpec } from "#shared/record/field-spec.ts";

/** The same field where a blank one says nothing: null then. */
export const orBlank = <T>({ read, echo, doubt, ...shown }: FieldSpec<T>): FieldSpec<T | null> => ({
  ...shown,
  read: (text): Parsed<T | null> => (text.trim() === "" ? parsed(null) : read(text)),
  ...(echo && { echo: (value: T | null) => (value === null ? "" : echo(value)) }),
  ...(doubt && { doubt: (value: T | null, text: string) => (value === null ? null : doubt(value, text)) }),
});
