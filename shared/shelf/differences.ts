import { shelfForm } from "#shared/record/shelf/shelf-form.ts";
import type { NewShelfType } from "#shared/shelf/shelf-type.ts";
import { typeTexts } from "#shared/shelf/type-texts.ts";

/** One thing that a type says otherwise: under which label, what was said and what is said now. */
export type Difference = { readonly label: string; readonly was: string; readonly now: string };

const NOBODY = { shelf: [], changes: null };

/** What two types say differently, as it would be typed, in the order of the form. */
export function differences(before: NewShelfType, after: NewShelfType): readonly Difference[] {
  const [old, said] = [typeTexts(before), typeTexts(after)];
  return Object.entries(shelfForm.fields(NOBODY)).flatMap(([name, { label }]) => {
    const [was = "", now = ""] = [old[name], said[name]];
    return was === now ? [] : [{ label, was: was || "not said", now: now || "not said" }];
  });
}
