import { describe, expect, it } from "vitest";
import { day } from "#shared/day/day.ts";
import type { Answers } from "#shared/sheet/answers.ts";
import { suggestColumns } from "#shared/sheet/answers.ts";
import { markOf } from "#shared/sheet/read-row.ts";
import { type Here, type HerePatient, type Standing, standings } from "#shared/sheet/stand.ts";
import { confirmed, unknownFact } from "#shared/tube/certainty.ts";
import { formContext } from "#tests/factories/form-context.ts";

const context = formContext({ tube: null, opens: { tubeId: "new", number: 1 } });
const nobody: Here = { byNumber: () => undefined, alike: () => [], wasBroughtIn: () => false };

const HEADINGS = ["name", "dob", "mrn", "tube", "size (Fr)", "placed", "last exchange", "due", "notes"];

type Asked = {
  readonly here?: Here;
  readonly answers?: Partial<Answers>;
  readonly headings?: readonly string[];
};

/** Rows as a list types them, cells divided by "|", from row 2 on. */
function stand(
  rows: readonly string[],
  { here = nobody, answers = {}, headings = HEADINGS }: Asked = {},
): Standing[] {
  const lines = rows.map((text, index) => ({
    row: index + 2,
    cells: headings.map((_, place) => text.split("|")[place]?.trim() ?? ""),
  }));
  const given: Answers = {
    columns: suggestColumns({ headings }, new Map()),
    dateOrder: "day first",
    nameOrder: null,
    issuer: "this hospital",
    ...answers,
  };
  const reading = { headings, answers: given, dateOrder: given.dateOrder, thisYear: 2026 };
  return [...standings(lines, { reading, context, here })];
}

const told = (standing: Standing | undefined) =>
  standing?.stands === "set aside"
    ? standing.refusals.map(({ field, refusal }) => `${field}: ${refusal.code}`)
    : standing?.stands;

function readOf(standing: Standing | undefined) {
  if (standing?.stands !== "comes in") throw new Error(JSON.stringify(standing));
  return standing.read;
}

const one = (row: string, asked?: Asked) => readOf(stand([row], asked)[0]);

describe("how a row of a list will stand", () => {
  it("as a tube taken over, reported, its clock from the last exchange and its tract from the placement", () => {
    const { details, tube } = one(
      "Brackenfold, Ottoline|3/4/1951|004711|PCN L 8Fr pigtail||3/4/26|14/8/26|30/10/26|hard to flush",
    );
    expect(details).toMatchObject({
      familyName: "Brackenfold",
      givenName: "Ottoline",
      birthOn: "1951-04-03",
      identifiers: [{ issuer: "this hospital", value: "004711" }],
    });
    expect(tube).toMatchObject({
      kind: "taken over",
      when: { precision: "day", earliest: "2026-08-14" },
      payload: {
        kind: "nephrostomy",
        side: { certainty: "reported", value: "left" },
        from: "the clinic's list",
        tractSince: { earliest: "2026-04-03" },
        plan: { act: "exchange", by: "2026-10-30" },
        note: "notes: hard to flush",
        facts: {
          retention: { certainty: "reported", value: "locking loop" },
          size: { certainty: "reported" },
        },
      },
    });
  });

  it("with every gap as unknown", () => {
    const { details, tube } = one("Brackenfold, Ottoline||004711|pcn|||||");
    expect(details.birthOn).toBeNull();
    expect(tube.when.precision).toBe("unknown");
    expect(tube.payload).toMatchObject({
      side: { certainty: "unknown" },
      tractSince: { precision: "unknown" },
      plan: null,
      facts: {
        size: { certainty: "unknown" },
        takes: { certainty: "unknown" },
        retention: { certainty: "unknown" },
      },
    });
  });

  it.each([
    ["bumper gastrostomy", "?", { certainty: "unknown" }],
    ["bumper gastrostomy", "", { certainty: "reported", value: "bumper" }],
    ["8Fr pigtail PCN L", "?", { certainty: "reported", value: "locking loop" }],
  ])("%s, held by %j: what holds it is not guessed from a name alone", (kind, held, retention) => {
    const headings = ["name", "mrn", "tube", "held by"];
    expect(
      one(`Brackenfold, Ottoline|004711|${kind}|${held}`, { headings }).tube.payload.facts.retention,
    ).toEqual(retention);
  });

  it("takes the unit of a bare size from the heading", () => {
    const eight = one("Brackenfold, Ottoline|?|004711|pcn l|8||||").tube.payload.facts.size;
    expect(eight).toEqual(one("Brackenfold, Ottoline|?|004711|pcn l 8 F|||||").tube.payload.facts.size);
  });

  it.each([
    ["no number", "Brackenfold, Ottoline||?|pcn l|8||||", ["number: text-missing"]],
    ["no kind", "Brackenfold, Ottoline||004711|8Fr pigtail|||||", ["kind: kind-not-said"]],
    ["a kind nobody knows", "Brackenfold, Ottoline||004711|widget|||||", ["kind: kind-not-said"]],
    ["two sizes", "Brackenfold, Ottoline||004711|pcn l|8/10F||||", ["size: two-sizes"]],
    ["two sizes without a unit", "Brackenfold, Ottoline||004711|pcn l|8/10||||", ["size: two-sizes"]],
    ["no size at all", "Brackenfold, Ottoline||004711|pcn l|big||||", ["size: length-not-understood"]],
    ["two tubes", "Brackenfold, Ottoline||004711|pcn b/l|8||||", ["kind: two-tubes"]],
    [
      "a size that differs from the tube's words",
      "Brackenfold, Ottoline||004711|pcn l 8F|10||||",
      ["size: cells-differ"],
    ],
    ["a day number", "Brackenfold, Ottoline||004711|pcn l|8|46115|||", ["placedOn: day-number"]],
    ["a date to come", "Brackenfold, Ottoline||004711|pcn l|8|3/4/27|||", ["placedOn: day-in-future"]],
    ["a formula", "Brackenfold, Ottoline||004711|=B3|8||||", ["kind: cell-formula"]],
    ["a number cut short", "Brackenfold, Ottoline||4.7E+11|pcn l|8||||", ["number: number-cut-short"]],
    [
      "a placement after the exchange",
      "Brackenfold, Ottoline||004711|pcn l|8|3/6/26|3/5/26||",
      ["placedOn: tract-after-tube"],
    ],
    [
      "everything at once",
      "Ottoline||?|widget|8/10F|46115|||",
      [
        "placedOn: day-number",
        "wholeName: name-one-word",
        "kind: kind-not-said",
        "size: two-sizes",
        "number: text-missing",
      ],
    ],
  ])("sets aside %s, naming the column", (_, row, refusals) => {
    expect(told(stand([row])[0])).toEqual(refusals);
  });

  it.each([
    ["", null, ""],
    ["unknown", null, ""],
    ["?", null, ""],
    ["n/a", null, ""],
    ["no", false, ""],
    ["none", false, ""],
    ["yes", true, ""],
    ["Welsh", true, "Welsh"],
  ])("an interpreter %j is needed: %s, language %j", (cell, needsInterpreter, language) => {
    const headings = [...HEADINGS, "interpreter"];
    const { details } = one(`Fern, Ada|3/4/1951|4711|PCN L|8|3/4/26|||x|${cell}`, { headings });
    expect(details).toMatchObject({ needsInterpreter, language });
  });

  it("an interpreter that nobody was asked about does not make another row of one brought in before", () => {
    const headings = [...HEADINGS, "interpreter"];
    const marks = ["", "no", "yes"].map((cell) =>
      markOf(one(`Fern, Ada|3/4/1951|4711|PCN L|8|3/4/26|||x|${cell}`, { headings })),
    );
    expect(marks[0]).toBe(marks[1]);
    expect(marks[0]).not.toBe(marks[2]);
  });

  it("sets aside a plan's day before the tube was placed, under the column in which it stands", () => {
    const due = (day: string): string => `Fern, Ada|3/4/1951|4711|PCN L|8|3/4/26|14/8/26|${day}|`;
    expect(stand([due("2/4/26"), due("3/4/26")]).map(told)).toEqual([
      ["exchangeBy: plan-before-tube"],
      "comes in",
    ]);
    const headings = HEADINGS.with(7, "plan");
    expect(stand([due("remove by 2 apr 2026")], { headings }).map(told)).toEqual([
      ["plan: plan-before-tube"],
    ]);
  });

  it("sets aside a tube that the list itself says is out", () => {
    const headings = [...HEADINGS, "date removed"];
    expect(told(stand(["Brackenfold, Ottoline||004711|pcn l|8|||||5/11/26"], { headings })[0])).toEqual([
      "removedOn: tube-is-out",
    ]);
  });
});

describe("rows that speak of the same", () => {
  const left = "Brackenfold, Ottoline|3/4/1951|004711|pcn l|8|3/4/26|||";

  it("are one patient by their number; a gap in one is filled from another", () => {
    const [first, second] = stand([left, "Brackenfold, Ottoline||004711|pcn r|8|3/4/26|||"]);
    expect(readOf(second).details).toEqual(readOf(first).details);
    expect(second).toMatchObject({ besideRows: [2] });
  });

  it("are said once, however they are written", () => {
    const [, again] = stand([
      left,
      "BRACKENFOLD, Ottoline |3 apr 1951|004711|L PCN 8Fr||3.4.2026|||".replace("BRACKENFOLD", "Brackenfold"),
    ]);
    expect(again).toEqual({ row: 3, stands: "said above", above: 2 });
  });

  it("are all set aside where one number has two names or two birth dates", () => {
    const rows = [
      left,
      "Mossgate, Perrin|3/4/1951|004711|jj l|6|3/4/26|||",
      "Larkspindle, Edwin||004712|jj r|6||||",
    ];
    expect(stand(rows).map(told)).toEqual([["number: number-shared"], ["number: number-shared"], "comes in"]);
  });

  it("one name and birth date under two numbers come in, and the later says so (case 23)", () => {
    const [, other] = stand([left, "Brackenfold, Ottoline|3/4/1951|004799|jj l|6|3/4/26|||"]);
    expect(other).toMatchObject({ stands: "comes in", alikeRows: [2] });
  });

  it("a second number that is another row's first one is set aside", () => {
    const headings = [...HEADINGS, "second number"];
    const rows = [
      left,
      "Larkspindle, Edwin||004712|jj r|6|||||004711",
      "Mossgate, Perrin||004713|jj l|6|||||004714",
    ];
    expect(stand(rows, { headings }).map(told)).toEqual([
      "comes in",
      ["secondNumber: number-shared"],
      "comes in",
    ]);
  });

  it("one name without birth dates is no reason to think of one person", () => {
    const rows = ["Brackenfold, Ottoline||004711|pcn l|8||||", "Brackenfold, Ottoline||004799|jj l|6||||"];
    expect(stand(rows)[1]).toMatchObject({ stands: "comes in", alikeRows: [] });
  });
});

describe("beside what stands here", () => {
  const here: HerePatient = {
    id: "p1",
    familyName: "Bräckenfold",
    givenName: "Ottoline",
    birthOn: day("1951-04-03"),
    tubes: [{ id: "t1", number: 1, kind: "nephrostomy", side: confirmed("left"), status: "in" }],
  };
  const asked = (rest: Partial<Here> = {}): Asked => ({ here: { ...nobody, byNumber: () => here, ...rest } });

  it("a known number with the same name comes to that record", () => {
    const [row] = stand(["Brackenfold, Ottoline||004711|pcn r|8||||"], asked());
    expect(row).toMatchObject({ stands: "comes in", here: { id: "p1" } });
  });

  it.each([
    ["another name", "Mossgate, Perrin||004711|pcn r|8||||", "number: number-of-another"],
    ["another birth date", "Brackenfold, Ottoline|4/4/1951|004711|pcn r|8||||", "number: number-of-another"],
    ["a tube of that kind and side", "Brackenfold, Ottoline||004711|pcn l|8||||", "kind: tube-here-already"],
  ])("%s is set aside", (_, row, refusal) => expect(told(stand([row], asked())[0])).toEqual([refusal]));

  it("a tube of that kind whose side nobody knows, here or in the row, is not taken for another", () => {
    const unknownHere = { ...here, tubes: here.tubes.map((tube) => ({ ...tube, side: unknownFact })) };
    const right = "Brackenfold, Ottoline||004711|pcn r|8||||";
    expect(told(stand([right], { here: { ...nobody, byNumber: () => unknownHere } })[0])).toEqual([
      "kind: tube-here-already",
    ]);
    expect(told(stand(["Brackenfold, Ottoline||004711|pcn|8||||"], asked())[0])).toEqual([
      "kind: tube-here-already",
    ]);
  });

  it("a row brought in before changes nothing, whatever stands here of it since", () => {
    const row = "Brackenfold, Ottoline||004711|pcn l|8||||";
    const mark = markOf(one(row));
    expect(told(stand([row], asked({ wasBroughtIn: (given) => given === mark }))[0])).toBe("here already");
  });

  it("the same name and birth date under another number is told", () => {
    const [row] = stand(["Brackenfold, Ottoline|3/4/1951|004799|jj l|6||||"], {
      here: { ...nobody, alike: () => [here] },
    });
    expect(row).toMatchObject({ stands: "comes in", alikeHere: true });
  });
});
