import { describe, expect, it } from "vitest";
import { day } from "#shared/day/day.ts";
import { zone } from "#shared/day/instant.ts";
import type { PatientDetails } from "#shared/record/patient/patient-details.ts";
import { patientForm } from "#shared/record/patient/patient-form.ts";
import { patientTexts } from "#shared/record/patient/patient-texts.ts";
import { formContext } from "#tests/factories/form-context.ts";

const full: PatientDetails = {
  familyName: "Brackenfold",
  givenName: "Ottoline",
  birthOn: day("1957-05-03"),
  identifiers: [
    { issuer: "this hospital", value: "000417" },
    { issuer: "Larkmoor", value: "L-99" },
  ],
  language: "Welsh",
  needsInterpreter: true,
  contact: {
    telephones: [
      { number: "555 0117", bestTimes: "after 5 pm" },
      { number: "+44 555 0118", bestTimes: null },
    ],
    alternate: { name: "Fennel Brackenfold, son", telephone: "555 0119", mayBeTold: false },
    homeNurse: "Larkmoor home nursing",
    referrer: "Urology",
    familyDoctor: "Dr Invented",
    responsibleService: "Urology",
    livesIn: zone("America/Denver"),
  },
};
const sparse: PatientDetails = {
  ...full,
  birthOn: null,
  identifiers: [{ issuer: "this hospital", value: "7" }],
  language: "",
  needsInterpreter: false,
  contact: {
    telephones: [],
    alternate: null,
    homeNurse: null,
    referrer: null,
    familyDoctor: null,
    responsibleService: null,
  },
};

describe("details as they would be typed", () => {
  it.each([
    ["everything", full],
    ["as little as there may be", sparse],
    ["nobody asked for an interpreter", { ...full, needsInterpreter: null }],
    [
      "nobody asked whether the contact may be told",
      { ...full, contact: { ...full.contact, alternate: { name: "A", telephone: null, mayBeTold: null } } },
    ],
  ])("read again, give the same: %s", (_name, details) => {
    expect(patientForm.read(patientTexts(details), formContext({ tube: null }))).toEqual({
      ok: true,
      entry: details,
    });
  });
});
