import { describe, expect, it } from "vitest";
import { newestVersions } from "#db/queries/versions.ts";
import type { Database } from "#db/sqlite.ts";
import { clinicView } from "#server/clinic-view.ts";
import { newId } from "#server/ids.ts";
import { dueList } from "#server/lists/due-list.ts";
import { whoSawWhat } from "#server/lists/who-saw-what.ts";
import { approveProtocol } from "#server/protocol/approve-protocol.ts";
import { viewProtocol } from "#server/protocol/view-protocol.ts";
import { protocolOf } from "#server/record/books.ts";
import { viewTube } from "#server/tubes/view-tube.ts";
import { PASSWORD, people } from "#tests/support/database.ts";
import { exchanged, placed } from "#tests/support/factories.ts";
import { clinicWithPatient, recordAs } from "#tests/support/patient.ts";
import { laterRefusalsOf } from "#tests/support/refusal.ts";
import { command } from "#tests/support/told.ts";

const petra = { userName: "petra", fullName: "Petra Physick", password: PASSWORD, version: 1 };

const record = (db: Database, entry: Parameters<typeof command>[0]) =>
  recordAs(db, [{ ...command(entry), eventId: newId() }]);

const exchange = (db: Database, tubeId: string) => {
  const view = viewTube(db, tubeId);
  const step = view.steps.find(({ kind }) => kind === "exchange");
  return {
    ...step,
    isExample: step?.why.some(({ code }) => code === "row-example"),
    approved: view.approved,
  };
};

const linesOf = (db: Database) => dueList(db, people.nurse).lines.map(({ tube, row }) => [tube?.id, row]);

describe("approving the protocol", () => {
  it("writes the next version: the same rows, with who and the clinic's day", async () => {
    using db = clinicWithPatient();
    expect(clinicView(db).isExample).toBe(true);
    const { today } = clinicView(db);
    expect(await approveProtocol(db, petra)).toEqual({ version: 2, by: "Petra Physick", on: today });
    expect(newestVersions(db)).toEqual({ protocol: 2, calendar: 1 });
    const approved = { by: "Petra Physick", on: today };
    expect(protocolOf(db, 2)).toEqual({ ...protocolOf(db, 1), version: 2, approved });
    expect(protocolOf(db, 1).approved).toBeNull();
    expect(viewProtocol(db).protocol.approved).toEqual(approved);
    expect(clinicView(db).isExample).toBe(false);
  });

  it("takes EXAMPLE from clocks that start after it; a date that stands keeps its version and its mark", async () => {
    using db = clinicWithPatient();
    record(db, placed({ on: "2026-05-29", tube: "tube-1" }));
    const before = exchange(db, "tube-1");
    expect(before).toMatchObject({ isExample: true, approved: null, pins: { protocol: 1 } });

    await approveProtocol(db, petra);
    expect(exchange(db, "tube-1")).toEqual(before);
    const right = { certainty: "confirmed", value: "right" } as const;
    record(db, placed({ on: "2026-06-02", tube: "tube-2", number: 2, side: right }));
    expect(exchange(db, "tube-2")).toMatchObject({
      isExample: false,
      approved: { by: "Petra Physick" },
      pins: { protocol: 2 },
    });
    expect(linesOf(db)).toEqual([
      ["tube-1", "example"],
      ["tube-2", "approved"],
    ]);

    record(db, exchanged({ on: "2026-08-14", tube: "tube-1" }));
    expect(exchange(db, "tube-1")).toMatchObject({
      isExample: false,
      target: "2026-10-30",
      pins: { protocol: 2 },
    });
  });

  it("is an act of the approver, for who saw and did what", async () => {
    using db = clinicWithPatient();
    await approveProtocol(db, petra);
    expect(JSON.stringify(whoSawWhat(db))).toContain("protocol: approve");
  });

  it.each([
    ["nobody of that name", { userName: "nobody" }, "user-name-unknown"],
    ["a nurse", { userName: "tansy", fullName: people.nurse.fullName }, "not-an-approver"],
    ["another name than the account's", { fullName: "Petra" }, "name-differs"],
    ["a wrong password", { password: "nine green lanterns" }, "sign-in-wrong"],
    ["no password", { password: "" }, "sign-in-wrong"],
    ["a version that is not the newest", { version: 2 }, "changed-meanwhile"],
  ])("by %s is refused, and nothing is written", async (_, change, code) => {
    using db = clinicWithPatient();
    const refusals = await laterRefusalsOf(approveProtocol(db, { ...petra, ...change }));
    expect(refusals.map((refusal) => refusal.code)).toEqual([code]);
    expect(newestVersions(db)).toEqual({ protocol: 1, calendar: 1 });
  });

  it("twice is refused: the newest version has its approver", async () => {
    using db = clinicWithPatient();
    await approveProtocol(db, petra);
    const refusals = await laterRefusalsOf(approveProtocol(db, { ...petra, version: 2 }));
    expect(refusals).toMatchObject([
      { code: "protocol-approved-already", args: { version: 2, by: "Petra Physick" } },
    ]);
    expect(newestVersions(db)).toEqual({ protocol: 2, calendar: 1 });
  });
});
