import { describe, expect, it } from "vitest";
import { day } from "#shared/day/day.ts";
import { confirmed, unknownFact } from "#shared/tube/certainty.ts";
import { fold } from "#shared/tube/fold.ts";
import { amended, clinicalStateNoted, type Entry, voided } from "#tests/support/factories.ts";
import { history } from "#tests/support/told.ts";
import type { Findings } from "./findings-schema.ts";

const at = (value: number) => confirmed({ value, asTyped: null });
const noted = (on: string, findings: Findings, id = `on-${on}`) => clinicalStateNoted({ id, on, findings });
const clinicalOf = (...entries: readonly Entry[]) => fold(history(...entries)).clinical;

describe("the clinical state of a patient", () => {
  it("is the newest of each item, with its day and entry; the order of recording changes nothing", () => {
    const early = noted("2026-11-02", { temperature: at(38.4), crp: at(140) });
    const late = noted("2026-11-05", { temperature: at(36.9) });
    for (const entries of [
      [early, late],
      [late, early],
    ]) {
      const clinical = clinicalOf(...entries);
      expect(clinical.temperature).toMatchObject({
        fact: at(36.9),
        eventId: "on-2026-11-05",
        when: { earliest: "2026-11-05" },
      });
      expect(clinical.crp).toMatchObject({ fact: at(140), eventId: "on-2026-11-02" });
      expect(clinical.sodium).toBeUndefined();
    }
  });

  it("an item that is said to be unknown is unknown, not what it was", () => {
    const clinical = clinicalOf(
      noted("2026-11-02", { chills: confirmed(false) }),
      noted("2026-11-03", { chills: unknownFact }),
    );
    expect(clinical.chills).toMatchObject({ fact: unknownFact, eventId: "on-2026-11-03" });
  });

  it("the day of a film counts, not the day on which somebody told of it", () => {
    const film = (on: string, finding: "larger" | "smaller") =>
      confirmed({ on: day(on), finding, words: null });
    const clinical = clinicalOf(
      noted("2026-11-02", { imaging: film("2026-11-02", "larger") }),
      noted("2026-11-05", { imaging: film("2026-10-28", "smaller") }),
    );
    expect(clinical.imaging).toMatchObject({ fact: { value: { finding: "larger" } } });
    const later = clinicalOf(
      noted("2026-11-02", { imaging: film("2026-11-02", "larger") }),
      noted("2026-11-05", { imaging: film("2026-11-02", "smaller") }),
    );
    expect(later.imaging).toMatchObject({ fact: { value: { finding: "smaller" } } });
  });

  it("what was put right counts as it stands now, what was voided not at all", () => {
    const wrong = noted("2026-11-02", { temperature: at(39) }, "wrong");
    const right = noted("2026-11-02", { temperature: at(37) });
    expect(clinicalOf(wrong, amended("wrong", right)).temperature).toMatchObject({ fact: at(37) });
    expect(clinicalOf(wrong, voided("wrong")).temperature).toBeUndefined();
  });
});
