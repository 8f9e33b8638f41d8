import { describe, expect, it } from "vitest";
import { eventsOfPatient } from "#db/queries/events.ts";
import { projectionOf } from "#db/queries/projections.ts";
import type { Database } from "#db/sqlite.ts";
import { newId } from "#server/ids.ts";
import { undoAct } from "#server/record/undo-act.ts";
import { people } from "#tests/support/database.ts";
import { capped, died, exchanged, F, fellOut, placed, voided } from "#tests/support/factories.ts";
import { clinicWithPatient, recordAs } from "#tests/support/patient.ts";
import { refusalsOf } from "#tests/support/refusal.ts";
import { command } from "#tests/support/told.ts";

const steps = (db: Database) => projectionOf(db, "patient-1").steps;
const kinds = (db: Database) =>
  steps(db)
    .map(({ kind }) => kind)
    .toSorted();
const nurse = (db: Database) => ({ db, staff: people.nurse });

const codesOf = (work: () => unknown) => refusalsOf(work).map(({ code }) => code);

const put = (id: string) => command({ ...placed({ on: "2026-05-29" }), id });

describe("an act of the record", () => {
  it("appends the event, projects the tube and its steps, with the versions that its dates come from", () => {
    using db = clinicWithPatient();
    recordAs(db, [put("e1"), { ...command(exchanged({ on: "2026-08-14" })), eventId: "e2" }]);
    expect(eventsOfPatient(db, "patient-1").map(({ row }) => [row.seq, row.kind, row.pinsProtocol])).toEqual([
      [1, "placed", 1],
      [2, "exchanged", 1],
    ]);
    const exchange = steps(db).find(({ kind }) => kind === "exchange");
    expect(exchange).toMatchObject({
      earliestOn: "2026-10-16",
      targetOn: "2026-10-30",
      latestOn: "2026-11-12",
    });
  });

  it("writes nothing when one of its commands is refused", () => {
    using db = clinicWithPatient();
    const codes = codesOf(() =>
      recordAs(db, [put("e1"), { ...command(exchanged({ on: "2026-05-01" })), eventId: "e2" }]),
    );
    expect(codes).toEqual(["event-before-opening"]);
    expect(eventsOfPatient(db, "patient-1")).toEqual([]);
    expect(projectionOf(db, "patient-1")).toEqual({ tubes: [], steps: [], visits: [], nextVisits: [] });
  });

  it("hard case 13: a death closes every step; undone, everything is as before", () => {
    using db = clinicWithPatient();
    recordAs(db, [put("e1")]);
    const before = projectionOf(db, "patient-1");
    recordAs(db, [{ ...command(died({ on: "2026-09-01" })), eventId: "e2" }]);
    expect(kinds(db)).toEqual([]);
    recordAs(db, [command({ ...voided("e2"), id: "e3" })]);
    expect(projectionOf(db, "patient-1").steps).toEqual(before.steps);
  });

  it("undo takes back all that an act recorded, once, and both stay in the stream", () => {
    using db = clinicWithPatient();
    recordAs(db, [put("e1")]);
    const before = projectionOf(db, "patient-1").steps;
    recordAs(db, [{ ...command(fellOut({ on: "2026-09-01" })), eventId: "e2" }]);
    expect(kinds(db)).toEqual(["tube out"]);
    const act = eventsOfPatient(db, "patient-1").at(-1)?.row.actId ?? "";
    const undoing = { actId: newId(), undoes: act };
    expect(undoAct(nurse(db), undoing)).toEqual({ undone: 1 });
    expect(undoAct(nurse(db), undoing)).toEqual({ undone: 1 });
    expect(eventsOfPatient(db, "patient-1")).toHaveLength(3);
    expect(projectionOf(db, "patient-1").steps).toEqual(before);
  });

  it("an act with nothing in it has nothing to undo", () => {
    using db = clinicWithPatient();
    expect(codesOf(() => undoAct(nurse(db), { actId: newId(), undoes: newId() }))).toEqual([
      "nothing-to-undo",
    ]);
  });
});

describe("two people at one record", () => {
  it("a change is refused after a later change of the same thing, and names it", () => {
    using db = clinicWithPatient();
    recordAs(db, [put("e1")]);
    recordAs(db, [{ ...command(exchanged({ on: "2026-08-14" }), 1), eventId: "e2" }]);
    const second = { ...command(exchanged({ on: "2026-08-14" }), 1), eventId: "e3" };
    expect(codesOf(() => recordAs(db, [second]))).toEqual(["changed-meanwhile"]);
  });

  it("a change of another thing stands beside it", () => {
    using db = clinicWithPatient();
    recordAs(db, [put("e1")]);
    recordAs(db, [{ ...command(exchanged({ on: "2026-08-14", size: F(10) }), 1), eventId: "e2" }]);
    recordAs(db, [{ ...command(capped({ on: "2026-09-01" }), 1), eventId: "e3" }]);
    expect(eventsOfPatient(db, "patient-1")).toHaveLength(3);
  });
});
