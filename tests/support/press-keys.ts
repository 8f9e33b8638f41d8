import type { FieldSpec, Texts } from "#shared/record/field-spec.ts";

type Shown = Pick<FieldSpec<never>, "initial" | "choices" | "long" | "belongs">;

const TAB = "\t";
const ENTER = "\n";

/** What a browser does with letters in a list of choices: goes to the first label that begins with what was typed there. */
function pickChoice(choices: NonNullable<Shown["choices"]>, typed: string): string {
  const found = choices.find(({ label }) => label.toLowerCase().startsWith(typed.toLowerCase()));
  if (found === undefined) throw new Error(`no choice begins with "${typed}"`);
  return found.value;
}

/**
 * A form as it stands after these keys, one character a key: it opens in its first field, Tab goes on to the next that is asked by then, after
 * the last to the button, a field that is reached is typed over, and Enter saves, which it does neither in a list nor in a long text. Every
 * field is in the texts, as a browser sends it.
 */
export function pressKeys(fields: Readonly<Record<string, Shown>>, keys: string): Texts {
  const order = Object.entries(fields);
  const texts = Object.fromEntries(order.map(([name, { initial }]) => [name, initial ?? ""]));
  if (keys.indexOf(ENTER) !== keys.length - 1) throw new Error("Enter saves: it comes last");
  let place = -1;
  for (const typed of keys.slice(0, -1).split(TAB)) {
    if (place === order.length) throw new Error("Tab past the button");
    const next = order.findIndex(([, field], n) => n > place && (field.belongs?.(texts) ?? true));
    place = next === -1 ? order.length : next;
    const [name, field] = order[place] ?? [];
    if (name === undefined || field === undefined || typed === "") continue;
    texts[name] = field.choices === undefined ? typed : pickChoice(field.choices, typed);
  }
  const last = order[place]?.[1];
  if (last?.long || last?.choices !== undefined) throw new Error("Enter does not save in this field");
  return texts;
}
