import { describe, expect, it } from "vitest";
import { kindOf, tubeKinds } from "#shared/tube/kind/kinds.ts";
import { kindField } from "./kind-field.ts";
import { sideField } from "./side-field.ts";

const kind = kindField({ label: "Kind" });
const everyKind = tubeKinds.map((name) => kindOf(name).name).join(", ");
const side = sideField({ label: "Side" });

describe("the kind, by name or short form", () => {
  it.each([
    ["pcn", "nephrostomy", null, "Nephrostomy"],
    ["PCN", "nephrostomy", null, "Nephrostomy"],
    ["Neph", "nephrostomy", null, "Nephrostomy"],
    ["nephrostomy tube", "nephrostomy", null, "Nephrostomy"],
    ["jj", "ureteral stent", null, "Ureteral stent"],
    ["double j", "ureteral stent", null, "Ureteral stent"],
    ["nephrour", "nephroureteral catheter", null, "Nephroureteral catheter"],
    ["absc", "abscess drain", null, "Abscess drain"],
    ["perc chole", "cholecystostomy", null, "Cholecystostomy"],
    ["IEBD R", "internal-external biliary drain", "right", "Right internal-external biliary drain"],
    ["PEG", "bumper gastrostomy", null, "Bumper gastrostomy"],
    ["GJ", "gastrojejunostomy", null, "Gastrojejunostomy"],
    ["j tube", "jejunostomy", null, "Jejunostomy"],
    ["SPC", "suprapubic catheter", null, "Suprapubic catheter"],
    ["chest tube l", "chest tube", "left", "Left chest tube"],
    ["seroma", "lymphocele drain", null, "Lymphocele or seroma drain"],
    ["venting peg", "venting gastrostomy", null, "Venting gastrostomy"],
    ["ascites drain", "tunnelled peritoneal drain", null, "Tunnelled peritoneal drain"],
    ["conduit l", "conduit catheter", "left", "Left retrograde catheter through a conduit"],
    ["other", "other", null, "Other tube"],
    ["pcn l", "nephrostomy", "left", "Left nephrostomy"],
    ["R pcn", "nephrostomy", "right", "Right nephrostomy"],
    ["left  JJ", "ureteral stent", "left", "Left ureteral stent"],
    ["pcn tx", "nephrostomy", "transplant", "Transplant nephrostomy"],
  ] as const)("%j", (text, of, on, echo) => {
    const value = { kind: of, side: on };
    expect(kind.read(text)).toEqual({ ok: true, value });
    expect(kind.echo?.(value)).toBe(echo);
  });

  it.each([
    ["", "text-missing", undefined],
    ["hose", "word-unknown", everyKind],
    ["nephro", "word-unclear", "nephrostomy, nephroureteral catheter"],
    ["l", "word-unknown", everyKind],
    ["g tube", "word-unclear", "balloon gastrostomy, loop gastrostomy, bumper gastrostomy"],
    ["PTBD", "word-unclear", "external biliary drain, internal-external biliary drain"],
  ])("%j is refused: %s", (text, code, choices) => {
    const read = kind.read(text);
    expect(read).toMatchObject({ ok: false, refusal: { code } });
    expect(!read.ok && read.refusal.args?.choices).toBe(choices);
  });
});

describe("the side, a word", () => {
  it.each([
    ["l", "left"],
    ["LT", "left"],
    ["Right", "right"],
    ["mid", "midline"],
    ["tx", "transplant"],
    ["none", "not sided"],
  ])("%j is %s", (text, value) => {
    expect(side.read(text)).toEqual({ ok: true, value: { certainty: "confirmed", value } });
  });

  it("takes ~ for about, ? for unknown and a blank for nothing said", () => {
    expect(side.read("~left")).toEqual({ ok: true, value: { certainty: "estimated", value: "left" } });
    expect(side.read("?")).toEqual({ ok: true, value: { certainty: "unknown" } });
    expect(side.read("")).toEqual({ ok: true, value: undefined });
    expect(side.echo?.({ certainty: "unknown" })).toBe("unknown");
  });

  it("refuses another word, and names the sides", () => {
    const choices = "left, right, midline, transplant, not sided";
    expect(side.read("upper")).toEqual({
      ok: false,
      refusal: { code: "word-unknown", args: { text: "upper", choices } },
    });
  });
});
