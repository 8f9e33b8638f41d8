import { afterEach, beforeEach, expect, it, vi } from "vitest";
import { holdOf, releaseHold, takeHold } from "#server/calls/hold-patient.ts";
import { callerAs } from "#tests/support/caller.ts";
import { people } from "#tests/support/database.ts";
import { clinicWithPatient } from "#tests/support/patient.ts";
import { refusalsOf } from "#tests/support/refusal.ts";

const TEN = Date.UTC(2026, 10, 6, 10);
const at = (minutes: number) => vi.setSystemTime(TEN + minutes * 60_000);

beforeEach(() => {
  vi.useFakeTimers({ toFake: ["Date"], now: TEN });
});
afterEach(() => {
  vi.useRealTimers();
});

const patientId = "patient-1";
const { caller, nurse } = people;

it("two callers never ring one patient at once: the second hears who and since when", () => {
  using db = clinicWithPatient();
  expect(holdOf(db, patientId)).toBeNull();
  expect(takeHold({ db, staff: caller }, { patientId })).toEqual({
    staffId: caller.id,
    name: "Corin Callwell",
    sinceAt: TEN,
  });
  at(29);
  expect(refusalsOf(() => takeHold({ db, staff: nurse }, { patientId }))).toEqual([
    { code: "call-held", args: { by: "Corin Callwell", since: "10:00" } },
  ]);
  expect(holdOf(db, patientId)?.name).toBe("Corin Callwell");
});

it("is taken over by a second press, and then the first has it no longer", () => {
  using db = clinicWithPatient();
  takeHold({ db, staff: caller }, { patientId });
  takeHold({ db, staff: nurse }, { patientId, over: true });
  expect(refusalsOf(() => takeHold({ db, staff: caller }, { patientId }))).toMatchObject([
    { code: "call-held" },
  ]);
  releaseHold({ db, staff: caller }, { patientId });
  expect(holdOf(db, patientId)?.staffId).toBe(nurse.id);
  releaseHold({ db, staff: nurse }, { patientId });
  expect(holdOf(db, patientId)).toBeNull();
});

it("is forgotten after half an hour, and counts from the last time that it was taken", () => {
  using db = clinicWithPatient();
  takeHold({ db, staff: caller }, { patientId });
  at(20);
  takeHold({ db, staff: caller }, { patientId });
  at(49);
  expect(holdOf(db, patientId)).not.toBeNull();
  at(50);
  expect(holdOf(db, patientId)).toBeNull();
  expect(refusalsOf(() => takeHold({ db, staff: nurse }, { patientId }))).toEqual([]);
});

it("is of patients that are known, and stands in no record of who saw what", async () => {
  using db = clinicWithPatient();
  expect(refusalsOf(() => takeHold({ db, staff: caller }, { patientId: "nobody" }))).toEqual([
    { code: "patient-unknown" },
  ]);
  await callerAs(db, caller).calls.taken({ patientId });
  await callerAs(db, caller).calls.released({ patientId });
  expect(db.sqlite.prepare("select count(*) from reads").pluck().get()).toBe(0);
});
