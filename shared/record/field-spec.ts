import type { Parsed, Refusal } from "#shared/errors/refusal.ts";
import { refusalSentence } from "#shared/words/refusals.ts";

/** One choice of a list: what is stored, how it is shown, and what else people type for it. */
export type Choice = { readonly value: string; readonly label: string; readonly words?: readonly string[] };

/**
 * One field of a recording form: how it is named, how its text is read, how what was read is said again. The
 * server reads the same text with the same spec again, always.
 */
export type FieldSpec<T> = {
  readonly label: string;
  readonly hint?: string;
  /** What stands in the field when the form opens without a draft. */
  readonly initial?: string;
  readonly choices?: readonly Choice[];
  readonly long?: boolean;
  /** May stand folded away until it is asked for: most entries do without. */
  readonly detail?: boolean;
  /** Whether what stands in the other fields asks for this one; where it does not, a blank one is not shown. */
  readonly belongs?: (texts: Texts) => boolean;
  readonly read: (text: string) => Parsed<T>;
  /** What will be stored, in words: "Fri 6 Nov 2026". Left out where the words typed are what is stored. */
  readonly echo?: (value: T) => string;
  /** What is asked where the words can be read so and may be a slip: a sentence that blocks nothing. Null where nothing is. */
  readonly doubt?: (value: T, text: string) => string | null;
};

/** The fields of one form by name, in the order in which they stand. `V` holds what they read. */
export type FieldSpecs<V> = { readonly [Name in keyof V]: FieldSpec<V[Name]> };

/** What was typed, by field. */
export type Texts = Readonly<Record<string, string>>;

export type FieldReading = { readonly echo?: string; readonly doubt?: string; readonly problem?: string };

/** What stands beside the field for this text. */
export function readField<T>(spec: FieldSpec<T>, text: string): FieldReading {
  const result = spec.read(text);
  if (!result.ok) return { problem: refusalSentence(result.refusal) };
  const echo = spec.echo?.(result.value) ?? "";
  const doubt = spec.doubt?.(result.value, text) ?? null;
  return { ...(echo !== "" && { echo }), ...(doubt !== null && { doubt }) };
}

/** An import or a seed leaves out what it does not say; a form sends every field, and a cleared one is empty. */
const textOf = (spec: Pick<FieldSpec<never>, "initial">, text: string | undefined): string =>
  text ?? spec.initial ?? "";

export type FormReading<V> =
  | { readonly ok: true; readonly values: V }
  | { readonly ok: false; readonly refusals: readonly Refusal[] };

/** All fields at once: every value, or every refusal with its field. */
export function readFields<V>(fields: FieldSpecs<V>, texts: Texts): FormReading<V> {
  const values = readWhatCan(fields, texts);
  const refusals: Refusal[] = [];
  for (const name of namesOf(fields)) {
    const result = fields[name].read(textOf(fields[name], texts[name]));
    if (!result.ok) refusals.push({ ...result.refusal, field: name });
  }
  if (refusals.length > 0) return { ok: false, refusals };
  return { ok: true, values: values as V };
}

/** The values of the fields that can be read so far, for a warning that stands while something is typed. */
export function readWhatCan<V>(fields: FieldSpecs<V>, texts: Texts): Partial<V> {
  const values: Partial<V> = {};
  for (const name of namesOf(fields)) {
    const result = fields[name].read(textOf(fields[name], texts[name]));
    if (result.ok) values[name] = result.value;
  }
  return values;
}

export const namesOf = <V>(fields: FieldSpecs<V>): readonly (keyof V & string)[] =>
  Object.keys(fields) as (keyof V & string)[];
