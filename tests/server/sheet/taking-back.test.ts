import { expect, it } from "vitest";
import { tubes } from "#db/schema/projections.ts";
import type { Database } from "#db/sqlite.ts";
import { newId } from "#server/ids.ts";
import { recordReading } from "#server/output/record-reading.ts";
import { recordEvent } from "#server/record/record-event.ts";
import { undoAct } from "#server/record/undo-act.ts";
import { takingBack } from "#server/sheet/taking-back.ts";
import type { FormKind } from "#shared/record/event-forms.ts";
import type { Texts } from "#shared/record/field-spec.ts";
import { people, testDatabase } from "#tests/support/database.ts";
import { refusalsOf } from "#tests/support/refusal.ts";
import { broughtIn } from "#tests/support/sheet.ts";

const staff = people.nurse;

/** Rows of one nephrostomy each, of people named Rowfolk. */
const rows = (count: number): string =>
  [
    "name,mrn,tube,placed",
    ...Array.from({ length: count }, (_, index) => `"Rowfolk, Number${index}",47${index},PCN L,14/3/25`),
  ].join("\r\n");

function recordOn(db: Database, place: number, { kind, texts }: { kind: FormKind; texts: Texts }): string {
  const tube = db.orm.select().from(tubes).orderBy(tubes.id).all()[place];
  if (tube === undefined) throw new Error(`the list brought in no tube ${place}`);
  const { id: tubeId, patientId } = tube;
  const actId = newId();
  recordEvent({ db, staff }, kind, { actId, patientId, tubeId, lastSeen: Number.MAX_SAFE_INTEGER, texts });
  return actId;
}

const exchange = { kind: "exchanged", texts: { when: "14 sep 2025", size: "10 f" } } as const;

it("nothing rests on a list as it came, nor on what else was noted of a patient, and it is taken back", async () => {
  using db = testDatabase();
  const { actId } = await broughtIn(db, rows(2));
  recordOn(db, 0, { kind: "conditions noted", texts: { stoneFormer: "yes" } });
  expect(takingBack(db, actId)).toMatchObject({
    batch: { fileName: "list.csv", tubes: 2, standing: 2 },
    resting: { count: 0, named: [] },
  });
  undoAct({ db, staff }, { actId: newId(), undoes: actId });
  expect(takingBack(db, actId)).toMatchObject({ batch: { standing: 0 }, resting: { count: 0 } });
});

it("names the record whose later work rests on the list, as the undo refuses it, until that is undone", async () => {
  using db = testDatabase();
  const { actId } = await broughtIn(db, rows(3));
  const exchanged = recordOn(db, 1, exchange);
  const { resting } = takingBack(db, actId);
  expect(resting).toMatchObject({
    count: 1,
    named: [
      { familyName: "Rowfolk", refusals: [{ code: "rests-on-entry", args: { entries: "exchanged" } }] },
    ],
  });
  expect(refusalsOf(() => undoAct({ db, staff }, { actId: newId(), undoes: actId }))).toEqual(
    resting.named[0]?.refusals,
  );
  undoAct({ db, staff }, { actId: newId(), undoes: exchanged });
  expect(takingBack(db, actId).resting.count).toBe(0);
});

it("counts every such record, and names the first ten", async () => {
  using db = testDatabase();
  const { actId } = await broughtIn(db, rows(13));
  for (let place = 0; place < 12; place += 1) recordOn(db, place, exchange);
  const { resting } = takingBack(db, actId);
  expect([resting.count, resting.named.length]).toEqual([12, 10]);
});

it("what brought in no list is none to take back", () => {
  using db = testDatabase();
  expect(() => takingBack(db, "no such act")).toThrow("nothing-to-undo");
});

it("does not let what was drained drop out of sight: a logged emptying keeps the list until it is voided", async () => {
  using db = testDatabase();
  const { actId } = await broughtIn(db, rows(2));
  const [tube] = db.orm.select().from(tubes).orderBy(tubes.id).all();
  if (tube === undefined) throw new Error("the list brought in no tube");
  const about = { patientId: tube.patientId, tubeId: tube.id, lastSeen: 0 };
  const logged = newId();
  recordReading(
    { db, staff },
    { ...about, actId: logged, texts: { drained: "300", flushGiven: "none", to: "today 00:01" } },
  );
  const lost = [{ code: "rests-on-readings", args: { count: 1 } }];
  expect(takingBack(db, actId).resting).toMatchObject({ count: 1, named: [{ refusals: lost }] });
  expect(refusalsOf(() => undoAct({ db, staff }, { actId: newId(), undoes: actId }))).toEqual(lost);
  undoAct({ db, staff }, { actId: newId(), undoes: logged });
  expect(takingBack(db, actId).resting.count).toBe(0);
  undoAct({ db, staff }, { actId: newId(), undoes: actId });
  expect(takingBack(db, actId)).toMatchObject({ batch: { standing: 0 } });
});
