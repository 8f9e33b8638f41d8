import { describe, expect, it } from "vitest";
import { type Choosing, choosingIn, choosingQuery, freeTimeHref } from "#app/visits/choosing.ts";
import { day } from "#shared/day/day.ts";
import { minute } from "#tests/factories/visit.ts";

const moves: Choosing = { kind: "moves", patientId: "patient-1", visitId: "visit-1" };
const books: Choosing = { kind: "for", patientId: "patient-1", tubes: "tube-1:exchange,tube-2:check" };
const slot = { on: day("2026-11-11"), from: minute("10:05"), room: "Room 1 & annex" };

describe("for whom a free time is looked for", () => {
  it.each([moves, books])("stays what it is from one address to the next: $kind", (choosing) => {
    expect(choosingIn(choosingQuery(choosing))).toEqual(choosing);
  });

  it.each([
    ["nobody", {}],
    ["a patient without tubes", { for: "patient-1" }],
    ["tubes without a patient", { tubes: "tube-1:exchange" }],
    ["a visit without its patient", { moves: "visit-1" }],
    ["a way elsewhere", { moves: "../../sign-out/visit-1" }],
    ["a way out of this site", { for: "//example.org", tubes: "tube-1:exchange" }],
    ["signs that no id has", { for: "patient 1", tubes: "tube-1:exchange" }],
  ])("is nobody where the address says %s", (_name, query) => {
    expect(choosingIn(query)).toBeNull();
    expect(choosingQuery(choosingIn(query))).toEqual({});
  });
});

describe("where a free time leads, with day, hour and room filled in", () => {
  it.each([
    ["the page that moves", moves, "/patients/patient-1/visits/visit-1/move", {}],
    ["the page that books", books, "/patients/patient-1/visit", { tubes: "tube-1:exchange,tube-2:check" }],
    ["the search", null, "/patients", {}],
  ] as const)("%s", (_name, choosing, path, more) => {
    const url = new URL(freeTimeHref(slot, choosing), "http://clinic.invalid");
    expect(url.pathname).toBe(path);
    expect(Object.fromEntries(url.searchParams)).toEqual({
      ...more,
      on: "2026-11-11",
      at: "10:05",
      room: "Room 1 & annex",
    });
  });
});
