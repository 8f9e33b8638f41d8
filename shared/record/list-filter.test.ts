import { describe, expect, it } from "vitest";
import {
  everything,
  type FilterTexts,
  filterChoices,
  filterNames,
  isEverything,
  readFilter,
} from "./list-filter.ts";

const beside = {
  people: [
    { id: "id-tansy", userName: "tansy", fullName: "Tansy Nurseworth" },
    { id: "id-nurse", userName: "nurse", fullName: "Nora Nightjar" },
  ],
  services: ["Urology", "urology ", "Liver unit"],
};
const read = (texts: FilterTexts) => readFilter(texts, beside);

describe("what a list is asked to show", () => {
  it.each([
    [{}, {}, null],
    [{ kind: "", side: " " }, {}, null],
    [{ kind: "nephrostomy" }, { kind: "nephrostomy" }, "Nephrostomy"],
    [{ kind: "PCN" }, { kind: "nephrostomy" }, "Nephrostomy"],
    [{ kind: "jj" }, { kind: "ureteral stent" }, "Ureteral stent"],
    [{ kind: "perc chole" }, { kind: "cholecystostomy" }, "Cholecystostomy"],
    [{ kind: "pcn l" }, { kind: "nephrostomy", side: "left" }, "Left nephrostomy"],
    [{ kind: "pcn l", side: "left" }, { kind: "nephrostomy", side: "left" }, "Left nephrostomy"],
    [{ side: "R" }, { side: "right" }, "Side right"],
    [{ side: "?", kind: "pcn" }, { side: "unknown", kind: "nephrostomy" }, "Nephrostomy, side unknown"],
    [{ role: "drains an organ" }, { role: "drains an organ" }, "Role drains an organ"],
    [{ role: "vent" }, { role: "venting" }, "Role venting"],
    [{ owner: "nurse" }, { owner: { role: "nurse" } }, "Owned by scheduling nurse"],
    [{ owner: "@nurse" }, { owner: { staffId: "id-nurse" } }, "Owned by Nora Nightjar"],
    [{ owner: "tansy" }, { owner: { staffId: "id-tansy" } }, "Owned by Tansy Nurseworth"],
    [{ service: "UROLOGY" }, { service: ["Urology", "urology "] }, "Service Urology"],
    [{ service: "unknown" }, { service: "unknown" }, "Service none named"],
    [
      { kind: "pcn", side: "l", role: "organ", owner: "@tansy", service: "liver" },
      {
        ...{ kind: "nephrostomy", side: "left", role: "drains an organ" },
        ...{ owner: { staffId: "id-tansy" }, service: ["Liver unit"] },
      },
      "Left nephrostomy, role drains an organ, owned by Tansy Nurseworth, service Liver unit",
    ],
  ])("%j", (texts, filter, words) => {
    expect(read(texts)).toMatchObject({ ok: true, filter: { ...everything, ...filter }, words });
  });

  it.each([
    [{ kind: "hose" }, "kind", "word-unknown"],
    [{ kind: "g tube" }, "kind", "word-unclear"],
    [{ side: "upper" }, "side", "word-unknown"],
    [{ role: "decoration" }, "role", "word-unknown"],
    [{ owner: "@nobody" }, "owner", "word-unknown"],
    [{ owner: "n" }, "owner", "word-unclear"],
    [{ service: "cardiology" }, "service", "word-unknown"],
    [{ kind: "pcn l", side: "right" }, "side", "side-differs"],
    [{ kind: "pcn l", side: "unknown" }, "side", "side-differs"],
  ])("%j is refused at %s: %s", (texts, field, code) => {
    expect(read(texts)).toMatchObject({ ok: false, refusals: [{ field, code }] });
  });

  it("names every word that is not understood at once", () => {
    const all = Object.fromEntries(filterNames.map((name) => [name, "zzz"]));
    const reading = read(all);
    expect(!reading.ok && reading.refusals.map(({ field }) => field)).toEqual([...filterNames]);
  });

  it("gives words for the address that are read as the same again", () => {
    const reading = read({ kind: "pcn l", role: "organ", owner: "nurse", service: "urology" });
    if (!reading.ok) throw new Error("was refused");
    expect(read(reading.texts)).toEqual(reading);
    expect(isEverything(reading.filter)).toBe(false);
    expect(isEverything(everything)).toBe(true);
  });
});

describe("what the lists of choices offer", () => {
  it("is understood, each choice", () => {
    const choices = filterChoices(beside);
    for (const name of ["side", "role", "owner", "service"] as const)
      for (const { value } of choices[name])
        expect(read({ [name]: value }), `${name} ${value}`).toMatchObject({
          ok: true,
          texts: { [name]: value },
        });
  });

  it("has each service once, with one for nobody named", () => {
    expect(filterChoices(beside).service.map(({ label }) => label)).toEqual([
      "Urology",
      "Liver unit",
      "none named",
    ]);
  });
});
