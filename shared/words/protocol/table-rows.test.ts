import { describe, expect, it } from "vitest";
import { exampleProtocol } from "#shared/protocol/example.ts";
import type { Protocol } from "#shared/protocol/protocol.ts";
import { listsOfRows, rowAt, rowsOf } from "#shared/protocol/rows/rows-of.ts";
import { tableRows } from "./table-rows.ts";

const bare: Protocol = {
  ...exampleProtocol,
  outputRows: null,
  calls: null,
  planning: null,
  visits: null,
  bleeding: null,
  balloon: null,
  anchors: [],
};

describe("the tables of a draft", () => {
  it.each([
    ["the example", exampleProtocol],
    ["a version without most rows", bare],
  ])("%s: every row and list stands in one, and each address leads to a row", (_, protocol) => {
    const addresses = tableRows(protocol).flatMap(({ rows }) => rows.map(({ address }) => address));
    const asked = rowsOf(protocol)
      .map(({ address }) => address)
      .filter((address) => !address.startsWith("intervals/"));
    expect(asked.filter((address) => !addresses.includes(address))).toEqual([]);
    const lines = tableRows(protocol).flatMap(({ rows }) => rows);
    expect(new Set(lines.map(({ word }) => word)).size).toBe(lines.length);
    for (const address of addresses) expect(rowAt(protocol, address), address).not.toBeNull();
    const empty = listsOfRows.filter(
      (path) => path !== "intervals" && !asked.some((address) => address.startsWith(`${path}/`)),
    );
    expect(empty.filter((path) => !addresses.includes(path))).toEqual([]);
  });
});
