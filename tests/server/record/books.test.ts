import { expect, it } from "vitest";
import { addProtocolVersion } from "#db/queries/versions.ts";
import type { Database } from "#db/sqlite.ts";
import { inTransaction } from "#db/transaction.ts";
import { protocolOf } from "#server/record/books.ts";
import { exampleProtocol } from "#shared/protocol/example.ts";
import { PROTOCOL_SHAPE } from "#shared/protocol/protocol.ts";
import { SEEDED_AT, testDatabase } from "#tests/support/database.ts";
import { frozenEvents } from "#tests/support/frozen.ts";

function rowsOfRelease(release: string): Record<string, unknown> {
  const {
    version: _version,
    approved: _approved,
    ...rows
  } = frozenEvents(release).protocol as Record<string, unknown>;
  return rows;
}

function store(db: Database, rows: Record<string, unknown>): void {
  const stored = {
    version: 2,
    rows,
    note: "",
    approvedBy: null,
    approvedOn: null,
    draftedBy: null,
    approvedAlone: null,
    createdAt: SEEDED_AT,
  };
  inTransaction(db, (tx) => addProtocolVersion(tx, stored));
}

it("a version that an earlier release stored is read in the shape of today, with no row for what it never held", () => {
  using db = testDatabase();
  const rows = rowsOfRelease("0.1.0");
  store(db, rows);
  const read = protocolOf(db, 2);
  expect(read).toMatchObject({
    shape: PROTOCOL_SHAPE,
    version: 2,
    approved: null,
    balloon: null,
    redFlags: [],
  });
  expect(read.intervals).toHaveLength((rows.intervals as unknown[]).length);
});

it.each(["0.2.0", "0.3.0", "0.4.0", "0.5.0", "0.6.0"])(
  "a version as release %s stored it is read, with no row for what is asked in a call",
  (release) => {
    using db = testDatabase();
    store(db, rowsOfRelease(release));
    const read = protocolOf(db, 2);
    expect(read).toMatchObject({ shape: PROTOCOL_SHAPE, version: 2 });
    expect(read.calls).toMatchObject({ questions: [], rungs: [], hours: [], diaryMissing: null });
  },
);

it("a new clinic has the example in full", () => {
  using db = testDatabase();
  expect(protocolOf(db, 1)).toEqual(exampleProtocol);
});
