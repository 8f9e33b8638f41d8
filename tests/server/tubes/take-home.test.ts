import { expect, it } from "vitest";
import { newId } from "#server/ids.ts";
import { approveProtocol } from "#server/protocol/approve-protocol.ts";
import { viewTube } from "#server/tubes/view-tube.ts";
import { exampleRedFlags } from "#shared/protocol/example-red-flags.ts";
import { exampleTubeOut } from "#shared/protocol/example-tube-out.ts";
import { PASSWORD } from "#tests/support/database.ts";
import { placed } from "#tests/support/factories.ts";
import { clinicWithPatient, recordAs } from "#tests/support/patient.ts";
import { command } from "#tests/support/told.ts";

it("a paper that goes home has the clinic as it is rung and the rows of today, while dates keep theirs", async () => {
  using db = clinicWithPatient();
  recordAs(db, [{ ...command(placed({ on: "2026-05-29" })), eventId: newId() }]);
  expect(viewTube(db, "tube-1").takeHome).toMatchObject({
    clinic: { name: "Quillmere Tube Clinic", phone: "" },
    approved: null,
    redFlags: exampleRedFlags,
    tubeOut: exampleTubeOut,
  });
  await approveProtocol(db, { userName: "petra", fullName: "Petra Physick", password: PASSWORD, version: 1 });
  const { takeHome, approved } = viewTube(db, "tube-1");
  expect(takeHome.approved).toMatchObject({ by: "Petra Physick" });
  expect(approved).toBeNull();
});
