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
 * A form as it stands after these keys, one character a key: it opens in its first field, Tab goes on, after the last field to the
 * button, a field that is reached is typed over, and Enter saves, which it does neither in a list nor in a long text. Every field is in
 * the texts, as a browser sends it.
 */
export function pressKeys(fields: Readonly<Record<string, Shown>>, keys: string): Texts {
  const texts = Object.fromEntries(Object.keys(fields).map((name) => [name, fields[name]?.initial ?? ""]));
  const names = Object.keys(fields).filter((name) => fields[name]?.belongs?.(texts) ?? true);
  const inFields = keys.slice(0, -1).split(TAB);
  if (keys.indexOf(ENTER) !== keys.length - 1) throw new Error("Enter saves: it comes last");
  if (inFields.length > names.length + 1) throw new Error("Tab past the button");
  const last = fields[names[inFields.length - 1] ?? ""];
  if (last?.long || last?.choices !== undefined) throw new Error("Enter does not save in this field");
  for (const [index, typed] of inFields.entries()) {
    const name = names[index] ?? "";
    const choices = fields[name]?.choices;
    if (typed !== "") texts[name] = choices === undefined ? typed : pickChoice(choices, typed);
  }
  return texts;
}
