import { mistake, type Telling } from "#shared/case/telling.ts";
import type { Texts } from "#shared/record/field-spec.ts";

/** The form that texts are typed into, which of several it is (0: the only one), and the fields that it has. */
type Into = { readonly form: string; readonly place: number; readonly fields: object };

/** Typed into a field that the form does not have: nothing would come of it, and the case would check something else. */
export function lackingField(typed: Texts, { form, place, fields }: Into): Telling<never> | null {
  const names = Object.keys(fields);
  const field = Object.keys(typed).find((name) => !names.includes(name));
  return field === undefined
    ? null
    : mistake("case-form-lacks-field", { place, form, field, fields: names.join(", ") });
}
