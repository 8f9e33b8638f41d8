import type { Texts } from "#shared/record/field-spec.ts";
import type { ShelfType } from "#shared/shelf/shelf-type.ts";
import { typeTexts } from "#shared/shelf/type-texts.ts";
import type { Fact } from "#shared/tube/certainty.ts";

/** No text says "reported": what others told is typed as less sure, never as surer. */
const lessSure = <T>(fact: Fact<T>): Fact<T> =>
  fact.certainty === "reported" ? { certainty: "estimated", value: fact.value } : fact;

/** The same of one of a few words, which cannot be typed as an estimate. */
const wordOrUnknown = (fact: Fact<unknown>, text: string | undefined): string =>
  fact.certainty === "reported" ? "?" : (text ?? "");

/**
 * Texts in which a type of the shelf was named, with what it said typed out in its place: the shelf says something else by now, and
 * what was entered must not change with it.
 */
export function typedOut(texts: Texts, type: ShelfType): Texts {
  const { bores } = type;
  const said = typeTexts({
    ...type,
    outside: lessSure(type.outside),
    takes: lessSure(type.takes),
    length: lessSure(type.length),
    bores: bores.map((bore) => ({ ...bore, inside: lessSure(bore.inside) })),
  });
  const filled = {
    size: type.outside.certainty === "unknown" ? "" : said.outside,
    takes: said.takes,
    bores: said.bores,
    endHole: wordOrUnknown(type.endHole, said.endHole),
    fullLength: said.length,
    retention: wordOrUnknown(type.retention, said.retention),
  };
  const blanks = Object.entries(filled).filter(([name]) => (texts[name] ?? "").trim() === "");
  return { ...texts, ...Object.fromEntries(blanks), shelf: "" };
}
