import { describe, expect, it } from "vitest";
import { kindField } from "#shared/record/field/kind-field.ts";
import { matchWord, plainWord, type Word } from "#shared/record/field/match-word.ts";
import { sideField } from "#shared/record/field/side-field.ts";
import { factFields } from "#shared/record/tube/fact-fields.ts";
import { openingDetails } from "#shared/record/tube/opening-fields.ts";
import { characters, modes, retentions, roles, sides } from "#shared/tube/vocabulary.ts";
import { characterWords } from "./characters.ts";
import { modeWords } from "./modes.ts";
import { retentionWords } from "./retentions.ts";
import { sideWords } from "./sides.ts";
import { roleWords } from "./tube-roles.ts";

/** The trade's words and short forms as lists and letters write them (practice, no source). */
const kind = kindField({ label: "Kind" });

const none = { shelf: [] };

describe("the kind, as the trade writes it", () => {
  it.each([
    ["PCN L", "nephrostomy", "left"],
    ["PCN-L", "nephrostomy", "left"],
    ["PCN (L)", "nephrostomy", "left"],
    ["Lt. PCN", "nephrostomy", "left"],
    ["perc. nephrostomy, right", "nephrostomy", "right"],
    ["Nephroureteral catheter", "nephroureteral catheter", null],
    ["double-loop stent", "ureteral stent", null],
    ["double-J", "ureteral stent", null],
    ["DJ stent R", "ureteral stent", "right"],
    ["J-J", "ureteral stent", null],
    ["perc chole", "cholecystostomy", null],
    ["Perc. Chole", "cholecystostomy", null],
    ["int/ext biliary drain", "internal-external biliary drain", null],
    ["internal/external PTBD", "internal-external biliary drain", null],
    ["ext PTBD", "external biliary drain", null],
    ["G-J tube", "gastrojejunostomy", null],
    ["G/J", "gastrojejunostomy", null],
    ["PEG-J", "gastrojejunostomy", null],
    ["J-tube", "jejunostomy", null],
    ["PEG", "bumper gastrostomy", null],
    ["balloon G-tube", "balloon gastrostomy", null],
    ["venting G-tube", "venting gastrostomy", null],
    ["SPC", "suprapubic catheter", null],
    ["IPC left", "tunnelled pleural catheter", "left"],
    ["tunneled peritoneal catheter", "tunnelled peritoneal drain", null],
    ["caecostomy tube", "cecostomy", null],
    ["abscess catheter", "abscess drain", null],
    ["biloma drain", "abscess drain", null],
    ["panc drain", "pancreatic drain", null],
    ["chest drain", "chest tube", null],
  ] as const)("%j is %s, side %s", (text, of, side) => {
    expect(kind.read(text)).toMatchObject({ ok: true, value: { kind: of, side } });
  });
});

it("a word for what holds a tube is no kind", () => {
  for (const word of ["pigtail", "double pigtail", "mushroom", "disc"])
    expect(kind.read(word)).toMatchObject({ ok: false });
});

describe("the side", () => {
  it.each([
    ["L.", "left"],
    ["(R)", "right"],
    ["left side", "left"],
    ["right-sided", "right"],
    ["tx kidney", "transplant"],
    ["N/A", "not sided"],
  ])("%j is %s", (text, value) => {
    expect(sideField({ label: "Side" }).read(text)).toMatchObject({ ok: true, value: { value } });
  });
});

describe("what holds it, how it is set and what it is for, in the fields of a form", () => {
  const { retention, role, mode } = { ...factFields(none), ...openingDetails(none) };

  it.each([
    ["pigtail", "locking loop"],
    ["Locking-loop", "locking loop"],
    ["double pigtail", "two loops"],
    ["mushroom", "bumper"],
    ["disk", "external disc"],
    ["cuffed", "cuff"],
    ["Stitch", "suture"],
  ])("held by %j is %s", (text, value) => {
    expect(retention.read(text)).toEqual({ ok: true, value: { certainty: "confirmed", value } });
  });

  it.each([
    ["gravity bag", "to bag"],
    ["water seal", "underwater seal"],
    ["one way valve", "one-way valve"],
    ["spigot", "capped"],
    ["capping trial", "on a clamp trial"],
  ])("set %j is %s", (text, value) => {
    expect(mode.read(text)).toEqual({ ok: true, value });
  });

  it.each([
    ["Feed", "feeding"],
    ["decompression", "venting"],
    ["organ", "drains an organ"],
  ])("for %j is %s", (text, value) => {
    expect(role.read(text)).toEqual({ ok: true, value });
  });

  it.each([
    ["pus, blood", ["purulent", "bloody"]],
    ["bile", ["bilious"]],
    ["blood-tinged", ["serosanguineous"]],
    ["stool, urine", ["feculent", "urine-like"]],
  ])("looks like %j", (text, value) => {
    expect(factFields(none).expectedFluid.read(text)).toEqual({ ok: true, value });
  });
});

const vocabularies: readonly (readonly [string, readonly string[], readonly Word<string>[]])[] = [
  ["sides", sides, sideWords],
  ["retentions", retentions, retentionWords],
  ["modes", modes, modeWords],
  ["roles", roles, roleWords],
  ["characters", characters, characterWords],
];

describe.each(vocabularies)("the words of %s", (_, values, vocabulary) => {
  it("have every value, called by its own name", () => {
    expect(vocabulary.map(({ value, words }) => [value, words[0]])).toEqual(
      values.map((value) => [value, value]),
    );
  });

  it("are each of one value only", () => {
    const all = vocabulary.flatMap(({ words }) => words.map(plainWord));
    expect(all.filter((word, index) => all.indexOf(word) !== index)).toEqual([]);
    for (const { value, words } of vocabulary)
      for (const word of words) expect(matchWord(word, vocabulary)).toEqual({ ok: true, value });
  });
});
