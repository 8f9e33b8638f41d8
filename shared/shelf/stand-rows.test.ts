import { describe, expect, it } from "vitest";
import { shelfCells } from "#shared/shelf/shelf-cells.ts";
import { columnLabel, columnsOf, shelfColumns } from "#shared/shelf/shelf-columns.ts";
import type { NewShelfType, ShelfType } from "#shared/shelf/shelf-type.ts";
import { type ShelfStanding, standRows } from "#shared/shelf/stand-rows.ts";
import { lengthOf } from "#shared/size/exact-length.ts";
import { confirmed, unknownFact } from "#shared/tube/certainty.ts";
import { refusalSentence } from "#shared/words/refusals.ts";
import { shelfType } from "#tests/factories/shelf-type.ts";

const linesOf = (rows: readonly string[]) =>
  rows.map((text, at) => ({ row: at + 2, cells: text.split("|") }));

function stand(headings: string, rows: readonly string[], shelf: readonly ShelfType[] = []) {
  const titles = headings.split("|");
  const columns = columnsOf(titles);
  if (!columns.ok) throw new Error(refusalSentence(columns.refusal));
  return standRows(linesOf(rows), { headings: titles, columns: columns.value, shelf });
}

const typeOf = (standing: ShelfStanding | undefined): NewShelfType => {
  if (standing === undefined || standing.stands === "set aside")
    throw new Error(JSON.stringify(standing ?? "no row"));
  return standing.type;
};

const reasonsOf = (standing: ShelfStanding | undefined): readonly string[] =>
  standing?.stands === "set aside"
    ? standing.reasons.map(({ label, refusal }) => `${label}: ${refusalSentence(refusal)}`)
    : [];

describe("the columns of a sheet of types", () => {
  it.each([
    ["our own headings", shelfColumns.map(columnLabel), shelfColumns],
    [
      "a clinic's own",
      ["Item", "Type", "French", "Max wire", "ID", "Length (cm)", "Tip", "Price"],
      ["name", "sort", "outside", "takes", "shaft", "length", "endHole", null],
    ],
  ])("are found by %s", (_, headings, columns) => {
    expect(columnsOf(headings)).toEqual({ ok: true, value: columns });
  });

  it.each([
    [
      "Sort|Size",
      'No column of this sheet is called "Name". Put that heading above the column that says it.',
    ],
    [
      "Name|Size",
      'No column of this sheet is called "Sort". Put that heading above the column that says it.',
    ],
    ["Name|Sort|Size|OD", 'Two columns of this sheet are read as "Size". Give one of them another heading.'],
  ])("%s are refused", (headings, sentence) => {
    const read = columnsOf(headings.split("|"));
    expect(read.ok ? "" : refusalSentence(read.refusal)).toBe(sentence);
  });
});

describe("a row of a sheet of types", () => {
  it("is typed into the form: untidy cells, the trade's words, units of the heading", () => {
    const [drain, wire] = stand(
      "Item|What it is|Size, Fr|Wire|Shaft inside, mm|Hub|Valve|Length|Tip|Held by|For|Certainty",
      [
        "Drain 8| Drain |8|.038 in|1.9|2,0 mm ± 0.05 mm|-|25|open|pigtail|abscess drain; pcn|measured",
        "Stiff|GUIDEWIRE|.035 in||||||||n/a|",
      ],
    );
    expect(typeOf(drain)).toEqual({
      sort: "tube",
      name: "Drain 8",
      kinds: ["abscess drain", "nephrostomy"],
      outside: confirmed(lengthOf(8, "F")),
      tolerance: null,
      takes: confirmed(lengthOf(0.038, "in")),
      takesDevice: unknownFact,
      bores: [
        { place: "hub", inside: confirmed(lengthOf(2, "mm")), tolerance: lengthOf(0.05, "mm") },
        { place: "shaft", inside: confirmed(lengthOf(1.9, "mm")), tolerance: null },
      ],
      endHole: confirmed("open"),
      length: confirmed(lengthOf(25, "cm")),
      retention: confirmed("locking loop"),
    });
    expect(typeOf(wire)).toMatchObject({ sort: "wire", name: "Stiff", length: unknownFact });
  });

  it.each([
    ["~", "estimated", "estimated"],
    ["about", "estimated", "estimated"],
    ["reported", "reported", "estimated"],
    ["told by others", "reported", "estimated"],
    ["", "confirmed", "estimated"],
  ])('known as "%s" has a size that is %s, and one with ~ that is %s', (word, certainty, about) => {
    const [row] = stand("Name|Sort|Size|Length|Known from", [`It|dilator|9 f|~20|${word}`]);
    expect([typeOf(row).outside.certainty, typeOf(row).length.certainty]).toEqual([certainty, about]);
  });

  it("has an unknown inside where somebody says so, and none where a dash stands", () => {
    const [row] = stand("Name|Sort|Size|Valve|Stopcock", ["It|sheath|?|unknown|-"]);
    expect(typeOf(row).bores).toEqual([{ place: "valve", inside: unknownFact, tolerance: null }]);
    expect(typeOf(row).outside).toEqual(unknownFact);
  });

  it.each([
    ["It|gadget|8 f|||", ['Sort: "gadget" is not one of the choices here.']],
    ["|tube|8 f|||", ["Name: Type the name that you call it by."]],
    ["It|tube|8|||", ['Size: "8" needs a unit: F, in, mm, cm or G.']],
    [
      "It|wire|.35 in|||",
      ["Size: .35 in is outside what is made (0.01 to 0.052 in). Check the number and the unit."],
    ],
    ["It|tube|8 f|6 f||", ['Shaft inside: "6 f" does not tell an inside. Type it like 1.9 mm or 0.075 in.']],
    [
      "It|tube|8 f||=A1|",
      ['Length, cm: "=A1" is a formula. Save the list with values in place of formulas.'],
    ],
    ["It|tube|8 f|||perhaps", ['Known from: "perhaps" is not one of the choices here.']],
    ["It|wire|.035 in|1 mm||", ["null: A wire is solid: leave this blank, or choose another sort."]],
  ])("%s is set aside with its reason", (row, reasons) => {
    expect(reasonsOf(stand("Name|Sort|Size|Shaft|Length|Certainty", [row])[0])).toEqual(reasons);
  });

  it("with the name of a row above is set aside", () => {
    const [first, second] = stand("Name|Sort|Size", ["It|tube|8 f", " IT |tube|10 f"]);
    expect(first?.stands).toBe("new");
    expect(reasonsOf(second)).toEqual([
      "Name: Row 2 of this sheet has the same name. Give each type a name of its own.",
    ]);
  });
});

describe("a row beside the shelf", () => {
  const there = shelfType({ name: "Standard 0.035", length: confirmed(lengthOf(145, "cm")) });

  it.each([
    ["the same is here already", "Standard 0.035|wire|.035 in|145", "here already"],
    ["another length changes it", "Standard 0.035|wire|.035 in|180", "changes"],
    ["a blank cell says nothing", "Standard 0.035|wire||", "here already"],
    ["a ? says that nobody knows", "Standard 0.035|wire|.035 in|?", "changes"],
    ["another spelling of the name changes it", "standard 0.035|wire|.035 in|145", "changes"],
    ["another name is new", "Standard|wire|.035 in|145", "new"],
  ])("%s", (_, row, stands) => {
    expect(stand("Name|Sort|Size|Length", [row], [there]).map((each) => each.stands)).toEqual([stands]);
  });
});

describe("what a sheet does not speak of", () => {
  const there = shelfType({
    sort: "tube",
    name: "Drain",
    outside: { certainty: "reported", value: lengthOf(8, "F") },
    bores: [
      { place: "hub", inside: { certainty: "reported", value: lengthOf(2, "mm") }, tolerance: null },
      { place: "shaft", inside: unknownFact, tolerance: null },
    ],
    kinds: ["nephrostomy"],
  });

  it("stays as it is on the shelf, place by place, and as well known", () => {
    const [row] = stand("Name|Sort|Shaft", ["Drain|tube|1.9 mm"], [there]);
    const { id: _id, ...bare } = there;
    expect(typeOf(row)).toEqual({
      ...bare,
      bores: [
        there.bores[0],
        { place: "shaft", inside: { certainty: "reported", value: lengthOf(1.9, "mm") }, tolerance: null },
      ],
    });
  });

  it("is unknown where the row says that it is another sort of thing", () => {
    const [row] = stand("Name|Sort", ["Drain|wire"], [there]);
    expect(typeOf(row)).toMatchObject({ sort: "wire", outside: unknownFact, bores: [], kinds: [] });
  });
});

describe("a type written as a row", () => {
  const headings = shelfColumns.map(columnLabel).join("|");
  const rowOf = (type: NewShelfType): string =>
    shelfColumns.map((column) => shelfCells(type)[column]).join("|");

  it.each([
    shelfType({
      outside: { certainty: "estimated", value: lengthOf(0.9, "mm") },
      tolerance: lengthOf(0.0005, "in"),
    }),
    shelfType({
      sort: "needle",
      name: "Entry",
      outside: confirmed(lengthOf(0.03225, "in")),
      takes: confirmed(lengthOf(0.018, "in")),
    }),
    shelfType({
      sort: "tube",
      name: "Drain",
      kinds: ["abscess drain", "nephrostomy"],
      outside: { certainty: "reported", value: lengthOf(10.2, "F") },
      bores: [
        { place: "hub", inside: unknownFact, tolerance: lengthOf(0.05, "mm") },
        {
          place: "end hole",
          inside: { certainty: "reported", value: lengthOf(0.04, "in") },
          tolerance: null,
        },
      ],
      endHole: { certainty: "reported", value: "closed" },
      retention: { certainty: "reported", value: "locking loop" },
    }),
    shelfType({
      sort: "sheath",
      name: "Sheath 9",
      outside: unknownFact,
      takesDevice: confirmed(lengthOf(9, "F")),
    }),
  ])("reads again as it was: $name", (type) => {
    const [row] = stand(headings, [rowOf(type)], [type]);
    expect(row?.stands).toBe("here already");
    const [anew] = stand(headings, [rowOf(type)]);
    const { id: _id, ...bare } = type;
    expect(typeOf(anew)).toEqual(bare);
  });
});
