import { expect, it } from "vitest";
import { newId } from "#server/ids.ts";
import { AUDIT_PAGE, whoSawWhat } from "#server/lists/who-saw-what.ts";
import { callerAs } from "#tests/support/caller.ts";
import { people } from "#tests/support/database.ts";
import { clinicWithPatient } from "#tests/support/patient.ts";

it("the lead sees who looked at whom and who recorded what of whom, by name", async () => {
  using db = clinicWithPatient();
  const nurse = callerAs(db, people.nurse);
  const texts = { kind: "pcn", side: "l", size: "8 f", when: "today" };
  const { tubeId } = await nurse.record.tube({ actId: newId(), lastSeen: 0, patientId: "patient-1", texts });
  await callerAs(db, people.caller).tube.view({ tubeId: tubeId ?? "" });
  await callerAs(db, people.caller).list.today();

  const { reads, acts } = await callerAs(db, people.lead).list.whoSawWhat();
  const ottoline = { patientId: "patient-1", familyName: "Brackenfold", givenName: "Ottoline" };
  expect(acts.rows).toMatchObject([
    { who: "Tansy Nurseworth", command: "record: placed", concerned: { ...ottoline, tube: null } },
  ]);
  expect(reads.rows).toMatchObject([
    { who: "Corin Callwell", procedure: "list.today", concerned: null },
    {
      who: "Corin Callwell",
      procedure: "tube.view",
      concerned: { ...ottoline, tube: { id: tubeId, name: "Left nephrostomy, 8 F" } },
    },
  ]);
});

it("pages looks and acts each by itself, and leaves none out", async () => {
  using db = clinicWithPatient();
  const nurse = callerAs(db, people.nurse);
  for (let count = 0; count < AUDIT_PAGE + 2; count += 1) await nurse.list.today();
  const texts = { kind: "pcn", side: "l", size: "8 f", when: "today" };
  await nurse.record.tube({ actId: newId(), lastSeen: 0, patientId: "patient-1", texts });

  const first = whoSawWhat(db);
  expect([first.reads.rows.length, first.reads.hasNext]).toEqual([AUDIT_PAGE, true]);
  expect([first.acts.rows.length, first.acts.hasNext]).toEqual([1, false]);
  const second = whoSawWhat(db, { seen: 2 });
  expect([second.reads.rows.length, second.reads.hasNext]).toEqual([2, false]);
  expect(second.acts).toEqual(first.acts);
  expect(whoSawWhat(db, { seen: 3 }).reads.rows).toEqual([]);
});
