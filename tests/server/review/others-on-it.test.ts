import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { addStaffRow } from "#db/queries/staff.ts";
import type { Database } from "#db/sqlite.ts";
import { inTransaction } from "#db/transaction.ts";
import { newId } from "#server/ids.ts";
import { recordEvent } from "#server/record/record-event.ts";
import type { Person } from "#shared/access/person.ts";
import type { Texts } from "#shared/record/field-spec.ts";
import { callerAs } from "#tests/support/caller.ts";
import { people } from "#tests/support/database.ts";
import { clinicWithPatient } from "#tests/support/patient.ts";
import { refusalsOf } from "#tests/support/refusal.ts";

/** A physician beside Petra Physick. */
const orla = {
  ...people.physician,
  id: "staff-orla",
  userName: "orla",
  fullName: "Orla Otherwise",
  isApprover: false,
};
const petra = people.physician;

const TEN = Date.parse("2026-11-06T10:00:00Z");
const at = (minutes: number) => vi.setSystemTime(TEN + minutes * 60_000);

beforeEach(() => {
  vi.useFakeTimers({ toFake: ["Date"], now: TEN });
});
afterEach(() => {
  vi.useRealTimers();
});

function clinic() {
  const db = clinicWithPatient();
  inTransaction(db, (tx) => addStaffRow(tx, orla));
  const { tubeId } = recordEvent({ db, staff: petra }, "placed", {
    ...about(),
    texts: { kind: "abscess drain", size: "10 f", when: "-20", plan: "" },
  });
  return { db, tubeId: tubeId ?? "" };
}

const about = (lastSeen = Number.MAX_SAFE_INTEGER) => ({
  actId: newId(),
  lastSeen,
  patientId: "patient-1",
});

const imaging: Texts = { what: "imaging", by: "+2", decidedBy: "Dr Example", closes: "review" };

type Deciding = { readonly db: Database; readonly tubeId: string };

const decide = ({ db, tubeId }: Deciding, staff: Person, lastSeen?: number) =>
  recordEvent({ db, staff }, "review decided", { ...about(lastSeen), tubeId, texts: imaging });

const looks = async ({ db, tubeId }: Deciding, staff: Person) =>
  (await callerAs(db, staff).review.view({ tubeId })).others;

describe("a second physician on the same tube", () => {
  it("is told who else opened its review, each once with the last time, and never of oneself", async () => {
    const { db, tubeId } = clinic();
    using _ = db;
    const asked = { db, tubeId };
    expect(await looks(asked, petra)).toMatchObject({ opened: [], decided: [] });
    at(3);
    await looks(asked, petra);
    at(7);
    expect(await looks(asked, orla)).toEqual({
      now: TEN + 7 * 60_000,
      opened: [{ who: "Petra Physick", at: TEN + 3 * 60_000 }],
      decided: [],
    });
    expect(await looks(asked, petra)).toMatchObject({
      opened: [{ who: "Orla Otherwise", at: TEN + 7 * 60_000 }],
    });
  });

  it("is not told of who may not decide, of the tube's other pages, or of the day before", async () => {
    const { db, tubeId } = clinic();
    using _ = db;
    const asked = { db, tubeId };
    await looks(asked, people.nurse);
    await callerAs(db, petra).tube.view({ tubeId });
    await callerAs(db, petra).tube.output({ tubeId });
    expect((await looks(asked, orla)).opened).toEqual([]);
    await looks(asked, petra);
    at(12 * 60);
    expect((await looks(asked, people.nurse)).opened).toHaveLength(2);
    at(12 * 60 + 1);
    expect((await looks(asked, people.nurse)).opened).toEqual([]);
  });

  it("is told what was decided meanwhile, until it is undone", async () => {
    const { db, tubeId } = clinic();
    using _ = db;
    const asked = { db, tubeId };
    await looks(asked, orla);
    at(12);
    const { actId, eventIds } = decide(asked, petra);
    at(14);
    const [told, ...more] = (await looks(asked, orla)).decided;
    expect(more).toEqual([]);
    expect(told).toMatchObject({
      eventId: eventIds[0],
      recordedBy: "Petra Physick",
      recordedAt: TEN + 12 * 60_000,
      payload: { decided: [{ what: "imaging" }] },
    });
    expect((await looks(asked, petra)).decided, "one's own").toEqual([]);
    await callerAs(db, petra).record.undone({ actId: newId(), undoes: actId });
    expect((await looks(asked, orla)).decided).toEqual([]);
  });

  it("is told the day after what was decided since the last look", async () => {
    const { db, tubeId } = clinic();
    using _ = db;
    const asked = { db, tubeId };
    await looks(asked, orla);
    at(12);
    decide(asked, petra);
    at(24 * 60);
    expect((await looks(asked, orla)).decided).toHaveLength(1);
    expect((await looks(asked, orla)).decided, "and not again").toEqual([]);
    expect((await looks(asked, people.nurse)).decided, "who never looked").toEqual([]);
  });

  it("is held back by nothing but what changed: deciding on a record seen before it is refused", () => {
    const { db, tubeId } = clinic();
    using _ = db;
    const asked = { db, tubeId };
    decide(asked, petra, 1);
    expect(refusalsOf(() => decide(asked, orla, 1))).toMatchObject([{ code: "changed-meanwhile" }]);
    expect(refusalsOf(() => decide(asked, orla))).toEqual([]);
  });
});
