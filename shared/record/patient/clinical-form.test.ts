import { describe, expect, it } from "vitest";
import { payloads } from "#shared/tube/payloads.ts";
import { formContext } from "#tests/factories/form-context.ts";
import { clinicalForm } from "./clinical-form.ts";

/** Today is Fri 6 Nov 2026. */
const context = formContext();
const read = (texts: Readonly<Record<string, string>>) => clinicalForm.read(texts, context);

describe("the clinical state as it is typed", () => {
  it("stores only what was typed, as of the moment of typing", () => {
    const result = read({ temperature: "37.2", chills: "no" });
    expect(result).toMatchObject({
      ok: true,
      entry: {
        kind: "clinical state noted",
        when: { earliest: "2026-11-06", latest: "2026-11-06" },
        time: expect.stringMatching(/^\d\d:\d\d$/),
      },
    });
    if (!result.ok) throw new Error("not read");
    expect(result.entry.payload).toEqual({
      findings: {
        temperature: { certainty: "confirmed", value: { value: 37.2, asTyped: null } },
        chills: { certainty: "confirmed", value: false },
      },
      note: null,
    });
  });

  it("of every item there is, with another unit kept beside its conversion", () => {
    const result = read({
      temperature: "100.4 F",
      chills: "?",
      feels: "very unwell",
      pain: "~4",
      jaundice: "no",
      coughOrBreathlessness: "yes",
      imaging: "larger",
      imagingOn: "4 nov",
      imagingWords: "5 cm",
      antibioticsUntil: "+5",
      toldBy: "the ward",
      when: "yesterday 22:00",
      whiteCells: "14",
      crp: "9 mg/dL",
      creatinine: "90",
      bilirubin: "12",
      sodium: "139",
      potassium: "4.1",
      culture: "awaited",
      voidedVolume: "1200",
      note: "rang at night",
    });
    if (!result.ok) throw new Error("not read");
    const reported = (value: unknown) => ({ certainty: "reported", value });
    const figure = (value: number, asTyped: string | null = null) => reported({ value, asTyped });
    expect(result.entry).toEqual({
      kind: "clinical state noted",
      when: { precision: "day", earliest: "2026-11-05", latest: "2026-11-05" },
      time: "22:00",
      payload: {
        findings: {
          temperature: figure(38, "100.4 F"),
          chills: { certainty: "unknown" },
          feels: reported("very unwell"),
          pain: { certainty: "estimated", value: { value: 4, asTyped: null } },
          jaundice: reported(false),
          coughOrBreathlessness: reported(true),
          imaging: reported({ on: "2026-11-04", finding: "larger", words: "5 cm" }),
          antibioticsUntil: reported("2026-11-11"),
          whiteCells: figure(14),
          crp: figure(90, "9 mg/dL"),
          creatinine: figure(90),
          bilirubin: figure(12),
          sodium: figure(139),
          potassium: figure(4.1),
          culture: reported("awaited"),
          voidedVolume: figure(1200),
        },
        toldBy: "the ward",
        note: "rang at night",
      },
    });
    expect(payloads["clinical state noted"].parse(result.entry.payload)).toEqual(result.entry.payload);
  });

  it.each([
    [{ antibioticsUntil: "none" }, { antibioticsUntil: { certainty: "confirmed", value: "none" } }],
    [{ antibioticsUntil: "?" }, { antibioticsUntil: { certainty: "unknown" } }],
    [{ imaging: "?" }, { imaging: { certainty: "unknown" } }],
  ])("%j", (texts, findings) => {
    expect(read(texts)).toMatchObject({ ok: true, entry: { payload: { findings } } });
  });

  it.each([
    [{}, "temperature", "nothing-said"],
    [{ toldBy: "the ward", note: "well" }, "temperature", "nothing-said"],
    [{ imaging: "smaller" }, "imagingOn", "text-missing"],
    [{ imagingOn: "-2" }, "imaging", "text-missing"],
    [{ imagingWords: "3 cm" }, "imaging", "text-missing"],
    [{ imaging: "other", imagingOn: "-2" }, "imagingWords", "text-missing"],
    [{ imaging: "smaller", imagingOn: "tomorrow" }, "imagingOn", "day-in-future"],
    [{ temperature: "104" }, "temperature", "measure-outside"],
    [{ antibioticsUntil: "soon" }, "antibioticsUntil", "day-not-understood"],
  ])("%j is refused at %s: %s", (texts: Readonly<Record<string, string>>, field, code) => {
    expect(read(texts)).toMatchObject({ ok: false, refusals: [{ field, code }] });
  });

  it("takes no entry that says nothing", () => {
    expect(payloads["clinical state noted"].safeParse({ findings: {}, note: null }).success).toBe(false);
  });
});
