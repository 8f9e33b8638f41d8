import { describe, expect, it } from "vitest";
import type { Database } from "#db/sqlite.ts";
import { newId } from "#server/ids.ts";
import { recordReading } from "#server/output/record-reading.ts";
import { viewOutput } from "#server/output/view-output.ts";
import { recordEvent } from "#server/record/record-event.ts";
import type { FormKind } from "#shared/record/event-forms.ts";
import type { Texts } from "#shared/record/field-spec.ts";
import { people } from "#tests/support/database.ts";
import { clinicWithPatient } from "#tests/support/patient.ts";

/** Acts on the one patient of a clinic. */
function acting(db: Database) {
  const about = () => ({ actId: newId(), lastSeen: Number.MAX_SAFE_INTEGER, patientId: "patient-1" });
  const record = (form: FormKind, texts: Texts) =>
    recordEvent({ db, staff: people.nurse }, form, { ...about(), texts });
  return {
    drain: (texts: Texts = {}): string =>
      record("placed", { kind: "abscess drain", size: "8 f", when: "-9", plan: "", ...texts }).tubeId ?? "",
    well: (texts: Texts = {}) =>
      record("clinical state noted", { temperature: "36.8", chills: "no", when: "now", ...texts }),
    /** The two days before today, from midnight to midnight. */
    twoDays: (tubeId: string, [first, second]: readonly [string, string]) => {
      const day = (from: string, to: string, drained: string) =>
        recordReading(
          { db, staff: people.caller },
          { ...about(), tubeId, texts: { from, to, drained, flushGiven: "none" } },
        );
      day("-2 00:00", "yesterday 00:00", first);
      day("yesterday 00:00", "today 00:00", second);
    },
  };
}

describe("the criterion on the output page", () => {
  it("comes from the tube's readings and the patient's clinical state", () => {
    using db = clinicWithPatient();
    const { drain, well, twoDays } = acting(db);
    const tubeId = drain();
    twoDays(tubeId, ["8", "6"]);
    expect(viewOutput(db, tubeId).criterion).toMatchObject({
      kind: "cannot tell",
      because: [{ code: "clinical-unknown", item: "temperature" }, { item: "chills" }],
    });
    well();
    expect(viewOutput(db, tubeId).criterion.kind).toBe("numeric part met");
    well({ temperature: "101.5 F" });
    expect(viewOutput(db, tubeId).criterion).toMatchObject({
      kind: "cannot tell",
      because: [{ code: "fever", celsius: 38.61 }],
    });
  });

  it("hard case 14: the readings of the other drain of the cavity are in the sum", () => {
    using db = clinicWithPatient();
    const { drain, well, twoDays } = acting(db);
    const [upper, lower] = [drain({ cavity: "pelvic" }), drain({ cavity: "Pelvic" })];
    well();
    twoDays(upper, ["8", "8"]);
    expect(viewOutput(db, upper).criterion.kind).toBe("cannot tell");
    twoDays(lower, ["8", "8"]);
    for (const tubeId of [upper, lower])
      expect(viewOutput(db, tubeId).criterion).toMatchObject({
        kind: "not met",
        because: [{ code: "day-not-low", mlPer24h: 16 }, { code: "day-not-low" }],
        beside: [{ code: "cavity-sum", tubes: [1, 2] }],
      });
  });
});
