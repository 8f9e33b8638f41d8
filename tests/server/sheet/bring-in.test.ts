import { describe, expect, it } from "vitest";
import { everyPatient, identifiersOf } from "#db/queries/patients.ts";
import { events } from "#db/schema/events.ts";
import { openSteps, tubes } from "#db/schema/projections.ts";
import { newId } from "#server/ids.ts";
import { openAmendment } from "#server/record/open-amendment.ts";
import { recordAmendment } from "#server/record/record-amendment.ts";
import { recordEvent } from "#server/record/record-event.ts";
import { undoAct } from "#server/record/undo-act.ts";
import { people, testDatabase } from "#tests/support/database.ts";
import { broughtIn } from "#tests/support/sheet.ts";

const HEADINGS = "name,dob,mrn,tube,size (Fr),placed,last exchange,due,notes";
const two = [
  HEADINGS,
  '"Brackenfold, Ottoline",3/4/1951,004711,PCN L,8,14/3/25,,,hard to flush',
  '"Brackenfold, Ottoline",,004711,PCN R,8,14/3/25,13/8/25,,',
  '"Mossgate, Perrin",?,004712,perc chole,,,,,',
].join("\r\n");

const names = (db: ReturnType<typeof testDatabase>) =>
  db.orm
    .select()
    .from(tubes)
    .all()
    .map(({ name }) => name)
    .toSorted();

describe("a list brought in", () => {
  it("opens one record a patient and one a tube, each with an open step", async () => {
    using db = testDatabase();
    expect(await broughtIn(db, two)).toMatchObject({ tubes: 3, patients: 2, setAside: 0 });
    expect(names(db)).toEqual([
      "Cholecystostomy, size unknown",
      "Left nephrostomy, 8 F",
      "Right nephrostomy, 8 F",
    ]);
    const owned = new Set(
      db.orm
        .select()
        .from(openSteps)
        .all()
        .map(({ tubeId }) => tubeId),
    );
    expect(
      db.orm
        .select()
        .from(tubes)
        .all()
        .every(({ id }) => owned.has(id)),
    ).toBe(true);
  });

  it("brought in twice changes nothing", async () => {
    using db = testDatabase();
    await broughtIn(db, two);
    const before = db.orm.select().from(events).all();
    await expect(broughtIn(db, two)).rejects.toThrow("nothing-to-bring-in");
    await expect(
      broughtIn(db, two.replaceAll("PCN L", "L nephrostomy").replace("3/4/1951", "3 apr 1951")),
    ).rejects.toThrow("nothing-to-bring-in");
    expect(db.orm.select().from(events).all()).toEqual(before);
  });

  it("is undone as one act: no tube, no patient, and every number free again", async () => {
    using db = testDatabase();
    const { actId } = await broughtIn(db, two);
    expect(undoAct({ db, staff: people.nurse }, { actId: newId(), undoes: actId })).toEqual({ undone: 5 });
    expect(names(db)).toEqual([]);
    expect(everyPatient(db).flatMap(({ id }) => identifiersOf(db, id))).toEqual([]);
    expect(everyPatient(db).every(({ withdrawnAt }) => withdrawnAt !== null)).toBe(true);
    expect(await broughtIn(db, two)).toMatchObject({ tubes: 3, patients: 2 });
  });

  it("is corrected like anything typed: the form opens with the row, and one field changed loses none", async () => {
    using db = testDatabase();
    await broughtIn(db, two.replace("PCN L", "PCN").replace("8,14/3/25", "?,14/3/25"));
    const event = db.orm.select().from(events).all()[0];
    if (event === undefined) throw new Error("nothing was brought in");
    const asked = { patientId: event.patientId, eventId: event.id };
    const { texts } = openAmendment(db, asked);
    expect(texts).toMatchObject({ kind: "Nephrostomy", side: "?", size: "?", note: "notes: hard to flush" });
    const amended = { ...texts, side: "left", amendedBecause: "seen on the film" };
    recordAmendment(
      { db, staff: people.nurse },
      { ...asked, actId: newId(), lastSeen: Number.MAX_SAFE_INTEGER, texts: amended },
    );
    expect(names(db)).toContain("Left nephrostomy, size unknown");
    expect(openAmendment(db, asked).texts).toMatchObject({ side: "left", note: "notes: hard to flush" });
  });

  it("leaves a record with entries of others when it is undone, and nothing is recorded under a withdrawn one", async () => {
    using db = testDatabase();
    const { actId } = await broughtIn(db, two);
    const [first, second] = everyPatient(db).map(({ id }) => id);
    if (first === undefined || second === undefined) throw new Error("two patients were brought in");
    const texts = { stoneFormer: "yes" };
    const said = { lastSeen: Number.MAX_SAFE_INTEGER, texts };
    recordEvent({ db, staff: people.nurse }, "conditions noted", {
      actId: newId(),
      patientId: first,
      ...said,
    });
    undoAct({ db, staff: people.nurse }, { actId: newId(), undoes: actId });
    const withdrawn = new Map(everyPatient(db).map(({ id, withdrawnAt }) => [id, withdrawnAt !== null]));
    expect([withdrawn.get(first), withdrawn.get(second)]).toEqual([false, true]);
    const late = { actId: newId(), patientId: second, ...said };
    expect(() => recordEvent({ db, staff: people.nurse }, "conditions noted", late)).toThrow(
      "record-withdrawn",
    );
  });
});
