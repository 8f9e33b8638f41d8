import { describe, expect, it } from "vitest";
import { formContext } from "#tests/factories/form-context.ts";
import { patientDetailsSchema } from "./patient-details.ts";
import { patientForm } from "./patient-form.ts";

const context = formContext({ tube: null });
const plain = { familyName: "Brackenfold", givenName: "Ottoline", birthOn: "3 may 1957", number: "000417" };
const read = (texts: Record<string, string>) => patientForm.read({ ...plain, ...texts }, context);

describe("a patient", () => {
  it("needs names, birth date and one number, whose leading zeros are kept", () => {
    const result = patientForm.read(plain, context);
    expect(result).toEqual({
      ok: true,
      entry: {
        familyName: "Brackenfold",
        givenName: "Ottoline",
        birthOn: "1957-05-03",
        identifiers: [{ issuer: "this hospital", value: "000417" }],
        language: "",
        needsInterpreter: null,
        contact: {
          telephones: [],
          alternate: null,
          homeNurse: null,
          referrer: null,
          familyDoctor: null,
          responsibleService: null,
        },
      },
    });
    expect(result.ok && patientDetailsSchema.safeParse(result.entry).success).toBe(true);
  });

  it("is named in any script, and no text is taken for markup", () => {
    const result = read({ familyName: "אבגד دهوز", givenName: "<script>alert(1)</script>" });
    expect(result).toMatchObject({
      ok: true,
      entry: { familyName: "אבגד دهوز", givenName: "<script>alert(1)</script>" },
    });
    expect(result.ok && patientDetailsSchema.parse(result.entry)).toEqual(result.ok && result.entry);
  });

  it("is reached by several telephones, each with its best times", () => {
    const result = read({
      telephones: "555 0117 after 5 pm\n\n+44 (0)555 0118 ext 12, mornings\n555-0119 18:00-20:00\n0555 0120",
    });
    expect(result).toMatchObject({
      ok: true,
      entry: {
        contact: {
          telephones: [
            { number: "555 0117", bestTimes: "after 5 pm" },
            { number: "+44 (0)555 0118 ext 12", bestTimes: "mornings" },
            { number: "555-0119", bestTimes: "18:00-20:00" },
            { number: "0555 0120", bestTimes: null },
          ],
        },
      },
    });
  });

  it("may live by another clock: a zone by its name or its city", () => {
    const livesIn = (typed: string) => {
      const result = read({ livesIn: typed });
      return result.ok ? result.entry.contact.livesIn : result.refusals;
    };
    expect(livesIn("denver")).toBe("America/Denver");
    expect(livesIn("Europe/London")).toBe("Europe/London");
    expect(livesIn("")).toBeUndefined();
    expect(livesIn("the seaside")).toEqual([
      { code: "zone-unknown", field: "livesIn", args: { text: "the seaside" } },
    ]);
  });

  it("may have an unknown birth date, and the age is told beside a known one", () => {
    expect(read({ birthOn: "?" })).toMatchObject({ ok: true, entry: { birthOn: null } });
    const { birthOn } = patientForm.fields(context);
    const typed = birthOn.read("7 nov 1957");
    expect(typed.ok && birthOn.echo?.(typed.value)).toBe("Thu 7 Nov 1957, 68 years old");
    expect(birthOn.echo?.(null)).toBe("unknown");
  });
});

it.each([
  ["familyName", "x".repeat(500), "text-too-long", { limit: 120 }],
  ["familyName", " ", "text-missing", { what: "the family name" }],
  ["givenName", "", "text-missing", { what: "the given name" }],
  ["birthOn", "", "day-missing", undefined],
  ["birthOn", "7 nov 2026", "day-in-future", { day: "Sat 7 Nov 2026" }],
  ["birthOn", "1957", "day-not-exact", { text: "1957" }],
  ["number", "", "text-missing", { what: "the record number" }],
  ["number", "9".repeat(41), "text-too-long", { limit: 40 }],
  ["telephones", "555 0117\nring the neighbor", "telephone-not-understood", { line: 2 }],
  ["telephones", Array.from({ length: 5 }, () => "555 0117").join("\n"), "too-many", { limit: 4 }],
  ["secondNumber", "L-99", "text-missing", { what: "who issued the second number" }],
  ["secondIssuer", "Larkmoor", "text-missing", { what: "the second number" }],
  ["alternateTelephone", "555 0119", "text-missing", { what: "whose telephone this is" }],
])("refuses %s %j: %s", (typed, text, code, args) => {
  const result = read({ [typed]: text });
  const { field, ...refusal } = result.ok ? { code: "none" } : (result.refusals[0] ?? { code: "none" });
  expect(refusal).toEqual(args === undefined ? { code } : { code, args });
  const beside: Record<string, string> = {
    secondNumber: "secondIssuer",
    secondIssuer: "secondNumber",
    alternateTelephone: "alternateName",
  };
  expect(field).toBe(beside[typed] ?? typed);
});

it("refuses the same number from the same issuer twice", () => {
  expect(read({ secondNumber: "000417", secondIssuer: "this hospital" })).toEqual({
    ok: false,
    refusals: [{ code: "choice-repeated", field: "secondNumber" }],
  });
});
