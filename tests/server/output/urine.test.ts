import { describe, expect, it } from "vitest";
import type { Database } from "#db/sqlite.ts";
import { newId } from "#server/ids.ts";
import { recordReading } from "#server/output/record-reading.ts";
import { viewUrine } from "#server/output/view-urine.ts";
import { recordEvent } from "#server/record/record-event.ts";
import type { FormKind } from "#shared/record/event-forms.ts";
import type { Texts } from "#shared/record/field-spec.ts";
import { people } from "#tests/support/database.ts";
import { clinicWithPatient } from "#tests/support/patient.ts";

const about = (texts: Texts) => ({ actId: newId(), lastSeen: 99, patientId: "patient-1", texts });

const placed = (db: Database, texts: Texts): string =>
  recordEvent({ db, staff: people.nurse }, "placed", about({ size: "8 f", plan: "", ...texts })).tubeId ?? "";

const record = (db: Database, form: FormKind, texts: Texts, tubeId?: string) =>
  recordEvent({ db, staff: people.nurse }, form, {
    ...about(texts),
    ...(tubeId !== undefined && { tubeId }),
  });

/** All of yesterday. */
const yesterday = (db: Database, tubeId: string, drained: string) =>
  recordReading(
    { db, staff: people.caller },
    { ...about({ drained, flushGiven: "none", from: "-1 00:00", to: "today 00:00" }), tubeId },
  );

describe("urine by all routes", () => {
  it("is asked of any of the tubes, left before right, with what was voided and put right since", () => {
    using db = clinicWithPatient();
    const right = placed(db, { kind: "pcn r", when: "-9" });
    const left = placed(db, { kind: "pcn l", when: "-9" });
    const drain = placed(db, { kind: "abscess drain", when: "-9" });
    yesterday(db, left, "900");
    yesterday(db, right, "400");
    record(db, "clinical state noted", { voidedVolume: "250", when: "-1 20:00" });
    for (const tube of [left, right])
      expect(viewUrine(db, tube)).toMatchObject({
        routes: [
          { tubeId: left, title: "Left nephrostomy" },
          { tubeId: right, title: "Right nephrostomy" },
        ],
        days: [{ sum: { kind: "known", mlPer24h: 1550 } }],
      });
    record(db, "clinical state noted", { voidedVolume: "?", when: "-1 21:00" });
    expect(viewUrine(db, left)?.days[0]?.sum).toEqual({ kind: "cannot tell", missing: ["voided"] });
    expect(viewUrine(db, drain)).toBeNull();
  });

  it("leaves out a tube that came out before the days that are shown", () => {
    using db = clinicWithPatient();
    const left = placed(db, { kind: "pcn l", when: "-40" });
    const right = placed(db, { kind: "pcn r", when: "-40" });
    const removal = { whole: "yes", loopReleased: "yes", seenHow: "by the physician", byWhom: "Dr Example" };
    record(db, "removed", { ...removal, when: "-15" }, right);
    yesterday(db, left, "900");
    expect(viewUrine(db, left)?.routes).toEqual([{ tubeId: left, title: "Left nephrostomy" }]);
  });
});
