import { describe, expect, it } from "vitest";
import { day } from "#shared/day/day.ts";
import { type ExchangePlan, exchangeAnswer, type PlanTube } from "#shared/fit/exchange-plan.ts";
import type { ShelfType } from "#shared/shelf/shelf-type.ts";
import { confirmed, unknownFact } from "#shared/tube/certainty.ts";
import { tableTopLines } from "#shared/words/table-top.ts";
import { cm, coaxial, F, mm } from "#tests/factories/coaxial.ts";
import { exchangePlan, planRows, planTube } from "#tests/factories/planned-exchange.ts";
import { shelfType } from "#tests/factories/shelf-type.ts";
import { blank, estimated, inch, reported, takes } from "#tests/factories/tube-inside.ts";

const wire = (name: string, size: number): ShelfType => shelfType({ name, outside: confirmed(inch(size)) });
const dilator = (size: number): ShelfType =>
  shelfType({ name: `Dilator ${size} F`, sort: "dilator", outside: confirmed(F(size)) });

function lines(
  said: Partial<ExchangePlan> = {},
  tube: Partial<PlanTube> = {},
  shelf: readonly ShelfType[] = [],
) {
  const plan = exchangePlan(said);
  const answer = exchangeAnswer(plan, planTube(tube), { rows: planRows, shelf });
  return Object.fromEntries(tableTopLines(plan, answer).map((group) => [group.head, group.lines]));
}

const toCome = (size: number) => ({ ...exchangePlan().toCome, outside: confirmed(F(size)) });

describe("the list for the table", () => {
  it("has the plan: each thing with its size in the trade's unit and its length", () => {
    expect(lines().Planned).toEqual(["Wire, 0.035 in, 145 cm", "Tube to come (nephrostomy), 8 F, 40 cm"]);
  });

  it("calls what is from the shelf by its name, and marks what is not confirmed or unknown", () => {
    const planned = lines({
      wire: { ...coaxial("wire", { outside: reported(inch(0.035)) }), name: "Standard 0.035" },
      toCome: { ...toCome(8), outside: estimated(F(8)), length: unknownFact },
      stiffener: coaxial("stiffener", { outside: F(5), length: cm(30) }),
    }).Planned;
    expect(planned).toEqual([
      "Wire: Standard 0.035, 0.035 in (reported), length unknown",
      "Tube to come (nephrostomy), about 8 F, length unknown",
      "Stiffener, 5 F, 30 cm",
    ]);
  });

  it("sizes a sheath by its inside", () => {
    const inside = {
      ...blank,
      bores: [{ place: "end hole" as const, inside: confirmed(mm(4.2)), tolerance: null }],
    };
    const sheath = coaxial("sheath", { outside: F(14), inside, length: cm(23) });
    // 4.2 mm x 3 = 12.6 F.
    expect(lines({ sheath }).Planned?.at(-1)).toBe("Sheath, inside 4.2 mm (12.6 F), 23 cm");
  });

  it("tells a sheath that only its label sizes by its label", () => {
    const sheath = coaxial("sheath", { inside: { ...blank, takesDevice: confirmed(F(12)) } });
    expect(lines({ sheath }).Planned?.at(-1)).toBe("Sheath, takes 12 F (4 mm), length unknown");
    expect(lines({ sheath: coaxial("sheath") }).Planned?.at(-1)).toBe(
      "Sheath, inside unknown, length unknown",
    );
  });

  it("has beside it the dilators of the step, the sizes next to it, and other wires that pass", () => {
    const shelf = [
      dilator(14),
      dilator(10),
      dilator(12),
      wire("Standard 0.035", 0.035),
      wire("Thin", 0.018),
      wire("Thick", 0.042),
    ];
    const planned = { ...coaxial("wire", { outside: inch(0.035) }), name: "Standard 0.035" };
    expect(lines({ wire: planned, toCome: toCome(12) }, {}, shelf)["Ready beside it"]).toEqual([
      "Dilator: Dilator 10 F",
      "Dilator: Dilator 12 F",
      "Dilator: Dilator 14 F",
      "The size below, 10 F: none on the shelf.",
      "The size above, 14 F: none on the shelf.",
      "Another wire that passes both tubes by size: Thin",
    ]);
  });

  it("says that the shelf has no dilator for a step, and nothing of them without one", () => {
    expect(lines({ toCome: toCome(12) })["Ready beside it"]?.[0]).toBe(
      "Dilators: none on the shelf for this step",
    );
    expect(lines()["Ready beside it"]?.[0]).toBe("The size below, 6 F: none on the shelf.");
  });

  it("never offers a wire of which nobody knows whether it passes", () => {
    const shelf = [wire("Thin", 0.018)];
    for (const inside of [blank, { ...blank, takes: reported(inch(0.038)) }, takes(0.014)])
      expect(lines({}, { inside }, shelf)["Ready beside it"]?.join()).not.toContain("Thin");
  });

  it("has how the old tube is let go, and what is settled before", () => {
    expect(lines({ on: day("2026-08-24") })["To let the tube in place go"]).toHaveLength(2);
    expect(lines({ on: day("2026-08-24") })["Settled before"]).toEqual([
      "Question of the row: who agreed the plan?",
      "Two identifiers and the side, asked of the patient",
      "Allergies, blood thinners and isolation, as the record has them",
    ]);
    expect(lines()["Settled before"]).toHaveLength(2);
  });
});
