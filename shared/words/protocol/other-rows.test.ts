import { describe, expect, it } from "vitest";
import { exampleProtocol } from "#shared/protocol/example.ts";
import type { Protocol } from "#shared/protocol/protocol.ts";
import { otherRows } from "./other-rows.ts";

type Path = readonly (string | number)[];

/** Where figures and words of a version stand, apart from the intervals, which have a table of their own. */
function leaves(value: unknown, path: Path = []): readonly Path[] {
  if (typeof value === "number" || typeof value === "string" || typeof value === "boolean") return [path];
  if (value === null || typeof value !== "object") return [];
  return Object.entries(value).flatMap(([name, inside]) => leaves(inside, [...path, name]));
}

const { shape, version, approved, ages, intervals, ...rows } = exampleProtocol;

/** The same with something else in one place. */
function otherwise(path: Path): Protocol {
  const copy = structuredClone(exampleProtocol);
  const last = path.at(-1) ?? "";
  const holder = path
    .slice(0, -1)
    .reduce<Record<string, unknown>>((at, name) => at[name] as Record<string, unknown>, copy as never);
  const was = holder[last];
  holder[last] =
    typeof was === "number" ? was + 1524 : typeof was === "boolean" ? !was : `${String(was)} or other`;
  return copy;
}

describe("the rows of a version in words", () => {
  it.each(leaves(rows).map((path) => [path.join(".")]))("tell %s", (path) => {
    expect(otherRows(otherwise(path.split(".")))).not.toEqual(otherRows(exampleProtocol));
  });

  it("say no row where the version has none, and keep a line for it", () => {
    const bare: Protocol = {
      ...exampleProtocol,
      outputRows: null,
      calls: null,
      bleeding: null,
      planning: null,
      visits: null,
      balloon: null,
      flush: [],
      tips: [],
      anchors: [],
      redFlags: [],
      tubeOut: [],
    };
    const said = otherRows(bare).flatMap(({ rows: lines }) => lines.filter(({ says }) => says === "no row"));
    expect(said.map(({ word }) => word)).toEqual([
      "Other rows of output",
      "Other calls",
      "Question",
      "Red flag",
      "Tube out",
      "Flush as ordered",
      "Balloon water",
      "Tip",
      "Anchors or sutures out",
      "Planning an exchange",
      "What is settled before a visit",
      "Bleeding risk",
    ]);
  });

  it("has a literal line of the fever and of a dry nephrostomy (example protocol)", () => {
    const lines = otherRows(exampleProtocol).flatMap(({ rows: some }) => some);
    expect(lines.find(({ word }) => word === "Fever")?.says).toBe("from 38 °C on (source CP)");
    expect(lines.find(({ word }) => word.startsWith("Dry: nephrostomy"))?.says).toBe(
      "nothing for 6 h: same day; the only way out, or no urine by any route: on call now (source CP)",
    );
  });

  it.each([
    [
      "Room: exchange of nephrostomy, nephroureteral catheter, conduit catheter",
      "30 minutes; each further tube of the visit 20 minutes; in a room with fluoroscopy (source CP)",
    ],
    [
      "Room: exchange of suprapubic catheter",
      "20 minutes; a further tube of the visit counts whole (source CP)",
    ],
    [
      "Before a visit: allergies, for exchange, check and removal of any tube",
      "contrast, antibiotics, latex, skin preparation; if a premedication is ordered, by mouth 13, 7 and 1 hours before; settled by 3 working days before; where it is needed it takes 13 hours before the visit (source the hours: MEM; rest CP)",
    ],
    [
      "Before a visit: isolation, for exchange, check and removal of any tube",
      "which, in a room that can; last of the list; settled by 1 working day before (source CP)",
    ],
    [
      "Before a visit: pregnancy test, for exchange and check of any tube",
      "where a pregnancy is possible and X-rays are used; settled by the day of the visit (source CP)",
    ],
    [
      "Before a visit: lies prone, for exchange and check of nephrostomy, nephroureteral catheter",
      "whether the patient can lie on the front for so long, and how else; settled by 5 working days before (source CP)",
    ],
    [
      "Anchors or sutures out: balloon gastrostomy",
      "anchors out on day 10 to 14 after the puncture (source CP)",
    ],
    [
      "Anchors or sutures out: tunnelled pleural catheter",
      "suture out on day 14 to 21 after the tube was put in (source CP)",
    ],
    ["A visit is confirmed", "by 2 working days before (source CP)"],
    [
      "Calls of a collection drain",
      "7 or 14 days after the last call: not before the fewest, by the most (source CP)",
    ],
    [
      "Calls about a diary that stops",
      "nothing entered for 7 days of a tube whose output is measured (source CP)",
    ],
    [
      "Not reached",
      "3 attempts within 5 working days, twice on the same day in a trial and in the first 72 h (source CP)",
    ],
    [
      "Still not reached: letter",
      "1 working day after what came before: a letter to the patient, in plain words (source CP)",
    ],
    [
      "Still not reached: physician",
      "5 working days after what came before: a physician decides how it goes on (source CP)",
    ],
    ["Hours of calls: morning", "from 09:00 to 12:00 by the clinic's clock (source CP)"],
    [
      "Question: breath or chest",
      'Short of breath, or pain in the chest? Asked of the patient. Yes: red flag "breathless or chest pain" (source CP)',
    ],
    [
      "Question: fever",
      'A temperature of 38.0 C or more, shaking chills, or feeling very unwell? Asked of the patient. Yes: red flag "fever"; red flag "fever and immune suppression" instead if immune suppression; red flag "trial with symptoms" instead if a tube is shut (source CP)',
    ],
    [
      "Question: headache and sweating",
      'Headache and sweating, with little or nothing draining? Asked of the patient: nephrostomy, suprapubic catheter. Yes: red flag "cord injury and blocked bladder drain" only if cord injury at T6 or above (source CP)',
    ],
    [
      "Question: draining",
      'Is anything draining? Asked of each tube that is open: role collection, drains an organ, venting. No: red flag "dry"; record "output" (source CP)',
    ],
    [
      "Question: balloon water",
      'Was the water in its balloon looked at, and was any lost? Asked of each tube: held by balloon. Yes: red flag "balloon loss"; record "balloon water" (source CP)',
    ],
    [
      "Question: knows of it",
      'Do they know that this tube is inside them, and by when it is changed or taken out? Asked of each tube: role internal. No: record "told of the tube" (source CP)',
    ],
  ])("has a literal line of %s", (word, says) => {
    const lines = otherRows(exampleProtocol).flatMap(({ rows: some }) => some);
    expect(lines.find((line) => line.word === word)?.says).toBe(says);
  });

  it("say most roles by the few that are left out, and a question that leads to nothing as one", () => {
    const calls = exampleProtocol.calls!;
    const asked = (change: object): string | undefined => {
      const [question] = calls.questions
        .filter(({ id }) => id === "skin")
        .map((row) => ({ ...row, ...change }));
      return otherRows({ ...exampleProtocol, calls: { ...calls, questions: [question!] } })
        .flatMap(({ rows: some }) => some)
        .find(({ word }) => word === "Question: skin")?.says;
    };
    expect(asked({})).toContain("Asked of each tube: any role but internal. ");
    expect(asked({ roles: [] })).toContain("Asked of each tube. ");
    expect(asked({ roles: ["venting", "collection"] })).toContain(
      "Asked of each tube: role venting, collection. ",
    );
    expect(asked({ opensOn: null, redFlag: null })).toContain(". No answer opens anything (source CP)");
    expect(asked({ of: "the patient", only: "shut", roles: [] })).toContain(
      "Asked of the patient where a tube is shut. ",
    );
  });
});
