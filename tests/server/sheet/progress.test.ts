import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { newId } from "#server/ids.ts";
import { bringIn } from "#server/sheet/bring-in.ts";
import { progressOf, withProgress } from "#server/sheet/progress.ts";
import { ASKED_EVERY_MS, SAID_FROM_S } from "#shared/sheet/progress.ts";
import { people, testDatabase } from "#tests/support/database.ts";
import { kept } from "#tests/support/sheet.ts";

describe("how far a list has come that is being brought in", () => {
  it("tells of every hundred rows read, then once how long writing takes, before anything is written", async () => {
    using db = testDatabase();
    const rows = Array.from({ length: 250 }, (_, place) => `"Mossgate, Perrin",${100_000 + place},PEG`);
    const sheetId = kept(db, ["name,mrn,tube", ...rows].join("\n"));
    const told: string[] = [];
    const written = (): number =>
      Number(db.sqlite.prepare("select count(*) as events from events").pluck().get());
    await bringIn(
      { db, staff: people.nurse },
      { actId: newId(), sheetId },
      {
        read: (count) => told.push(`${count} read`),
        writing: (seconds) => {
          expect(seconds).toBeGreaterThanOrEqual(1);
          told.push(`${written()} written`);
        },
      },
    );
    expect(told).toEqual(["100 read", "200 read", "0 written"]);
    expect(written()).toBe(250);
  });

  describe("for whoever asks", () => {
    beforeEach(() => {
      vi.useFakeTimers();
    });
    afterEach(() => {
      vi.useRealTimers();
    });

    it("is kept while the work lasts, and gone after", async () => {
      await withProgress("list", async ({ read, writing }) => {
        expect(progressOf("list")).toEqual({ read: 0, writesForS: null });
        read(100);
        expect(progressOf("list")).toEqual({ read: 100, writesForS: null });
        await writing(SAID_FROM_S - 1);
        expect(progressOf("list")).toEqual({ read: 100, writesForS: SAID_FROM_S - 1 });
      });
      expect(progressOf("list")).toBeNull();
    });

    it("a long act waits until everybody has asked once", async () => {
      let isWriting = false;
      const work = withProgress("list", async ({ writing }) => {
        await writing(SAID_FROM_S);
        isWriting = true;
      });
      await vi.advanceTimersByTimeAsync(ASKED_EVERY_MS);
      expect(isWriting).toBe(false);
      expect(progressOf("list")?.writesForS).toBe(SAID_FROM_S);
      await vi.advanceTimersByTimeAsync(ASKED_EVERY_MS);
      expect(isWriting).toBe(true);
      await work;
    });
  });
});
