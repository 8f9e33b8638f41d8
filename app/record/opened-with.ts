import { type FieldSpecs, namesOf, type Texts } from "#shared/record/field-spec.ts";

/** A form that opens with what stands: what is said is shown, also where it would stand folded away in a new form. */
export const openedWith = <V>(fields: FieldSpecs<V>, texts: Texts): FieldSpecs<V> =>
  Object.fromEntries(
    namesOf(fields).map((name) => {
      const { initial = "", detail = false, ...spec } = fields[name];
      const text = texts[name] ?? initial;
      return [name, { ...spec, initial: text, detail: detail && text === initial }];
    }),
  ) as unknown as FieldSpecs<V>;
