import { describe, expect, it } from "vitest";
import { clinicOf } from "#db/queries/clinic.ts";
import { projectionOf } from "#db/queries/projections.ts";
import { staffByUserName } from "#db/queries/staff.ts";
import type { Database } from "#db/sqlite.ts";
import { inAct } from "#server/act.ts";
import { newId } from "#server/ids.ts";
import { undoAct } from "#server/record/undo-act.ts";
import { type Closing, closeAccount } from "#server/staff/close-account.ts";
import { confirmed } from "#shared/tube/certainty.ts";
import type { StepKind } from "#shared/tube/step-kinds.ts";
import { people } from "#tests/support/database.ts";
import {
  blocked,
  conditionsNoted,
  died,
  type Entry,
  fellOut,
  handedOver,
  hospiceDecided,
  placed,
  removalDecided,
  stepAssigned,
  transferred,
  voided,
} from "#tests/support/factories.ts";
import { clinicWithPatient, recordAs } from "#tests/support/patient.ts";
import { refusalsOf } from "#tests/support/refusal.ts";
import { command } from "#tests/support/told.ts";

const close = (db: Database, closing: Closing) => {
  const actId = newId();
  const { passed } = inAct({ db, staff: people.lead, actId, command: "close", input: closing }, (tx, at) =>
    closeAccount(tx, { staffId: people.lead.id, actId, at, zone: clinicOf(tx).zone }, closing),
  );
  return { passed, actId };
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
    expect(close(db, { staffId: people.nurse.id, passTo: { staffId: people.physician.id } })).toMatchObject({
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

const theirs = { role: "nurse", staffId: people.nurse.id } as const;
const given = (step: StepKind) => stepAssigned({ on: "2026-06-03", step, owner: theirs });

const record = (db: Database, ...entries: readonly Entry[]): readonly string[] =>
  entries.flatMap((entry) =>
    recordAs(db, [{ ...command(entry), eventId: entry.id ?? newId() }]).map(({ id }) => id),
  );

describe("hard case 41: every sort of step passes on", () => {
  const hospice = conditionsNoted({ on: "2026-06-01", conditions: { hospice: confirmed(true) } });

  it.each<[StepKind, readonly Entry[]]>([
    ["exchange", [given("exchange")]],
    ["call", [given("call")]],
    ["remove", [removalDecided({ on: "2026-06-01", by: "2026-09-01", owner: theirs })]],
    ["handover", [handedOver({ on: "2026-06-01" }), given("handover")]],
    ["hospice", [hospice, given("hospice")]],
    ["find out", [transferred({ on: "2026-06-01", findOut: ["what wire it takes"] }), given("find out")]],
    ["alarm", [blocked({ on: "2026-06-01" }), given("alarm")]],
    ["tube out", [fellOut({ on: "2026-06-01" }), given("tube out")]],
  ])("%s", (kind, entries) => {
    using db = clinicWithPatient();
    record(db, placed({ on: "2026-05-29" }), ...entries);
    expect(owners(db)).toContainEqual([kind, "nurse", people.nurse.id]);
    close(db, { staffId: people.nurse.id, passTo: { staffId: people.physician.id } });
    expect(owners(db)).toContainEqual([kind, "physician", people.physician.id]);
    expect(owners(db).map(([, , staffId]) => staffId)).not.toContain(people.nurse.id);
  });

  it.each<[string, Entry]>([
    ["a loss", fellOut({ id: "hides", on: "2026-06-05" })],
    ["a death", died({ id: "hides", on: "2026-06-05" })],
    ["a decision in hospice", hospiceDecided({ id: "hides", on: "2026-06-05", until: "2027-12-31" })],
  ])("one that %s hid while its owner left comes back with the role", (_name, hides) => {
    using db = clinicWithPatient();
    record(db, placed({ on: "2026-05-29" }), given("exchange"), hides);
    expect(owners(db).map(([kind]) => kind)).not.toContain("exchange");
    close(db, { staffId: people.nurse.id, passTo: { role: "physician" } });
    record(db, voided("hides"));
    expect(owners(db)).toContainEqual(["exchange", "nurse", null]);
  });

  it("and so does one whose passing on is undone", () => {
    using db = withNamedOwner();
    const { actId } = close(db, { staffId: people.nurse.id, passTo: { staffId: people.physician.id } });
    undoAct({ db, staff: people.lead }, { actId: newId(), undoes: actId });
    expect(owners(db)).toContainEqual(["exchange", "nurse", null]);
  });
});
