import { type Parsed, parsed, unread } from "#shared/errors/refusal.ts";
import { type Analyte, unitsOf } from "#shared/review/analyte.ts";
import { exactConcentration, inOwnUnit } from "#shared/review/concentration.ts";
import type { TestValue } from "#shared/review/fluid-test-schema.ts";
import { type Fact, unknownFact } from "#shared/tube/certainty.ts";

const LONGEST = 40;
/** Three decimals are exact in every unit, and no laboratory gives more. */
const VALUE = /^(~?) ?(\d{1,9}(?:[.,]\d{1,3})?) ?(.*)$/;
const GROUPED = /^[1-9]\d{0,2},\d{3}$/;

/**
 * A value as people copy it from a report: "4200", "5 mg/dL", "3,4 umol/L", "~90", "?" (unknown), "34 ?" (nobody told the unit). A number alone is in the
 * analyte's own unit, which the label names. A blank is left to the field.
 *
 * Refusals: `measure-not-understood`, `measure-comma-unclear`, `measure-outside`.
 */
export function readConcentration(entry: string, analyte: Analyte): Parsed<Fact<TestValue>> {
  const typed = entry.trim();
  if (typed === "?") return parsed(unknownFact);
  const text = typed.slice(0, LONGEST);
  const { own, typed: units, most } = unitsOf(analyte);
  const [, about, figure = "", word = ""] = VALUE.exec(typed.toLowerCase().replace(/\s+/g, " ")) ?? [];
  const found = units.find(({ words }) => word === "" || words.includes(word));
  if (figure === "" || text !== typed || (found === undefined && word !== "?"))
    return unread("measure-not-understood", { text, unit: own });
  if (GROUPED.test(figure)) return unread("measure-comma-unclear", { text });
  const certainty = about === "~" ? "estimated" : "confirmed";
  if (found === undefined) return parsed({ certainty, value: { level: null, asTyped: typed } });
  const level = exactConcentration(figure.replace(",", "."), found.inOwn);
  if (level === undefined || inOwnUnit(level) > most)
    return unread("measure-outside", { text, least: 0, most, unit: own });
  return parsed({ certainty, value: { level, asTyped: found.inOwn === "1" ? null : typed } });
}

/** What is asked of a number without a unit that may have been meant in the other one. Null where nothing is. */
export function unitDoubt(
  fact: Fact<TestValue> | undefined,
  { text, analyte }: { text: string; analyte: Analyte },
) {
  if (fact === undefined || fact.certainty === "unknown" || /[a-zµμ?]/i.test(text)) return null;
  const { own, aloneFrom, aloneTo } = unitsOf(analyte);
  const figure = fact.value.level === null ? aloneFrom : inOwnUnit(fact.value.level);
  if (figure >= aloneFrom && figure <= aloneTo) return null;
  return `Without a unit that is ${figure} ${own}. Type the unit if it is mg/dL.`;
}
