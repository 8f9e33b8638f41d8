import { expect, it } from "vitest";
import { newId } from "#server/ids.ts";
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
  expect(acts).toMatchObject([
    { who: "Tansy Nurseworth", command: "record: placed", concerned: { ...ottoline, tube: null } },
  ]);
  expect(reads).toMatchObject([
    { who: "Corin Callwell", procedure: "list.today", concerned: null },
    {
      who: "Corin Callwell",
      procedure: "tube.view",
      concerned: { ...ottoline, tube: { id: tubeId, name: "Left nephrostomy, 8 F" } },
    },
  ]);
});
