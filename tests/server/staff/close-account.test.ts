import { describe, expect, it } from "vitest";
import { clinicOf } from "#db/queries/clinic.ts";
import { projectionOf } from "#db/queries/projections.ts";
import { staffByUserName } from "#db/queries/staff.ts";
import type { Database } from "#db/sqlite.ts";
import { inAct } from "#server/act.ts";
import { newId } from "#server/ids.ts";
import { type Closing, closeAccount } from "#server/staff/close-account.ts";
import { people } from "#tests/support/database.ts";
import { command, placed, stepAssigned } from "#tests/support/factories.ts";
import { clinicWithPatient, recordAs } from "#tests/support/patient.ts";
import { refusalsOf } from "#tests/support/refusal.ts";

const close = (db: Database, closing: Closing) => {
  const actId = newId();
  return inAct({ db, staff: people.lead, actId, command: "close", input: closing }, (tx, at) =>
    closeAccount(tx, { staffId: people.lead.id, actId, at, zone: clinicOf(tx).zone }, closing),
  );
};

/** A nephrostomy whose exchange is the nurse's by name. */
function withNamedOwner(): Database & Disposable {
  const db = clinicWithPatient();
  recordAs(db, [
    { ...command(placed({ on: "2026-05-29" })), eventId: "e1" },
    {
      ...command(stepAssigned({ on: "2026-05-29", owner: { role: "nurse", staffId: people.nurse.id } })),
      eventId: "e2",
    },
  ]);
  return db;
}

const owners = (db: Database) =>
  projectionOf(db, "patient-1").steps.map(({ kind, ownerRole, ownerStaffId }) => [
    kind,
    ownerRole,
    ownerStaffId,
  ]);

describe("hard case 41: somebody leaves", () => {
  it("an account with open steps does not close until somebody takes them", () => {
    using db = withNamedOwner();
    expect(refusalsOf(() => close(db, { staffId: people.nurse.id, passTo: null }))).toMatchObject([
      { code: "steps-still-owned", args: { count: 1 } },
    ]);
    expect(staffByUserName(db, "tansy")?.closedAt).toBeNull();
  });

  it("every step passes to a person before the account closes", () => {
    using db = withNamedOwner();
    expect(close(db, { staffId: people.nurse.id, passTo: { staffId: people.physician.id } })).toEqual({
      passed: 1,
    });
    expect(owners(db)).toContainEqual(["exchange", "physician", people.physician.id]);
    expect(staffByUserName(db, "tansy")?.closedAt).not.toBeNull();
  });

  it("or to a role", () => {
    using db = withNamedOwner();
    close(db, { staffId: people.nurse.id, passTo: { role: "nurse" } });
    expect(owners(db)).toContainEqual(["exchange", "nurse", null]);
  });

  it("not to somebody whose account is closed, nor to the one who leaves", () => {
    using db = withNamedOwner();
    const toSelf = { staffId: people.nurse.id, passTo: { staffId: people.nurse.id } };
    expect(refusalsOf(() => close(db, toSelf))).toMatchObject([{ code: "person-unknown", field: "passTo" }]);
  });

  it("the last lead stays", () => {
    using db = withNamedOwner();
    expect(refusalsOf(() => close(db, { staffId: people.lead.id, passTo: null }))).toMatchObject([
      { code: "last-lead" },
    ]);
  });
});
