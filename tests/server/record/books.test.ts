import { expect, it } from "vitest";
import { addProtocolVersion } from "#db/queries/versions.ts";
import { inTransaction } from "#db/transaction.ts";
import { protocolOf } from "#server/record/books.ts";
import { exampleProtocol } from "#shared/protocol/example.ts";
import { PROTOCOL_SHAPE } from "#shared/protocol/protocol.ts";
import { SEEDED_AT, testDatabase } from "#tests/support/database.ts";
import { frozenEvents } from "#tests/support/frozen.ts";

it("a version that an earlier release stored is read in the shape of today, with no row for what it never held", () => {
  using db = testDatabase();
  const {
    version: _version,
    approved: _approved,
    ...rows
  } = frozenEvents("0.1.0").protocol as Record<string, unknown>;
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

it("a new clinic has the example in full", () => {
  using db = testDatabase();
  expect(protocolOf(db, 1)).toEqual(exampleProtocol);
});
