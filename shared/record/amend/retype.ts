import { type FieldSpecs, namesOf, type Texts } from "#shared/record/field-spec.ts";

type Then<V> = { readonly texts: Texts; readonly fields: FieldSpecs<V> };

/**
 * What was typed once, as it must be typed now to mean the same: "today" of a past day becomes that day. Each text is read as it was
 * then and said again; where that reads the same now it stands, otherwise the old text does.
 */
export function retype<V>(then: Then<V>, now: FieldSpecs<V>): Texts {
  const texts = namesOf(now).map((name): [string, string] => {
    const typed = then.texts[name] ?? "";
    const meant = then.fields[name].read(typed);
    const said = meant.ok ? (now[name].echo?.(meant.value) ?? typed) : typed;
    const again = now[name].read(said);
    const same = meant.ok && again.ok && JSON.stringify(again.value) === JSON.stringify(meant.value);
    return [name, same ? said : typed];
  });
  return Object.fromEntries(texts);
}
