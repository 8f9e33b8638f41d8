import { describe, expect, it } from "vitest";
import { marksExample } from "#app/lists/marks-example.ts";

const example = { row: "example" } as const;
const approved = { row: "approved" } as const;

describe("EXAMPLE stands once at the head, or beside each line that is one", () => {
  it.each([
    ["nothing is approved: the head says it", true, [example, example], false],
    ["the newest table is approved, every date shown is older", false, [example, example], true],
    ["some dates are by an approved row", false, [example, approved], true],
    ["a newer table waits for its approver", true, [example, approved], true],
  ])("%s", (_, isExample, lines, marks) => {
    expect(marksExample({ isExample }, lines)).toBe(marks);
  });
});
