import { type FieldSpecs, namesOf, type Texts } from "#shared/record/field-spec.ts";

const TAB = "\t";
const ENTER = "\n";

/** What a browser does with a letter in a list of choices: goes on to the first label that begins with what was typed there. */
function pickChoice(choices: readonly { value: string; label: string }[], typed: string): string {
  const found = choices.find(({ label }) => label.toLowerCase().startsWith(typed.toLowerCase()));
  if (found === undefined) throw new Error(`no choice begins with "${typed}"`);
  return found.value;
}

/**
 * A form as it stands after these keys, one character a key: it opens in its first field, Tab goes on, a field that is reached is
 * typed over, and Enter saves, so it must come last. Every field is in the texts, as a browser sends it.
 */
export function pressKeys<V>(fields: FieldSpecs<V>, keys: string): Texts {
  const names = namesOf(fields);
  const texts = Object.fromEntries(names.map((name) => [name, fields[name].initial ?? ""]));
  if (keys.indexOf(ENTER) !== keys.length - 1) throw new Error("Enter saves: it comes last");
  for (const [index, typed] of keys.slice(0, -1).split(TAB).entries()) {
    const name = names[index];
    if (name === undefined) throw new Error("Tab past the last field");
    const { choices } = fields[name];
    if (typed !== "") texts[name] = choices === undefined ? typed : pickChoice(choices, typed);
  }
  return texts;
}
