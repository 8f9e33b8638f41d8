import type { Measured } from "#shared/clinical/findings-schema.ts";
import { type MeasureName, measureOf } from "#shared/clinical/measures.ts";
import { type Parsed, parsed, unread } from "#shared/errors/refusal.ts";
import { type Fact, unknownFact } from "#shared/tube/certainty.ts";

const LONGEST = 40;
const FIGURE = /^(~?) ?(\d+(?:[.,]\d+)?) ?(.*)$/;
const GROUPED = /^[1-9]\d{0,2},\d{3}$/;

const tidy = (text: string): string => text.trim().toLowerCase().replace(/\s+/g, " ");

const rounded = (figure: number, decimals: number): number =>
  Math.round(figure * 10 ** decimals) / 10 ** decimals;

/**
 * A measured figure as people type it: "38.2", "38,2 C", "100.4 F", "~12", "?" (unknown). A figure alone takes the measure's own unit; any
 * other has to be typed, and the words stay beside what they were converted to. A blank is no figure: `text-missing`.
 *
 * Refusals besides: `measure-not-understood`, `measure-comma-unclear`, `measure-outside`.
 */
export function readMeasure(entry: string, name: MeasureName): Parsed<Fact<Measured>> {
  const typed = entry.trim();
  if (typed === "") return unread("text-missing", { what: "the figure" });
  if (typed === "?") return parsed(unknownFact);
  const { unit, units, decimals, least, most } = measureOf(name);
  const text = typed.slice(0, LONGEST);
  const [, about, figure = "", word = ""] = FIGURE.exec(tidy(typed)) ?? [];
  const found = units.find(({ words }) => words.includes(word));
  if (figure === "" || text !== typed || (word !== "" && found === undefined))
    return unread("measure-not-understood", { text, unit });
  if (GROUPED.test(figure)) return unread("measure-comma-unclear", { text });
  const plain = Number(figure.replace(",", "."));
  const value = rounded(found === undefined ? plain : found.toOwn(plain), decimals);
  if (value < least || value > most) return unread("measure-outside", { text, least, most, unit });
  const converted = found !== undefined && rounded(plain, decimals) !== value;
  return parsed({
    certainty: about === "~" ? "estimated" : "confirmed",
    value: { value, asTyped: converted ? typed : null },
  });
}
