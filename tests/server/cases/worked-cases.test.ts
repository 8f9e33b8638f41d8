import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { shippedBooks } from "#server/cases/case-books.ts";
import { computes, type WorkedCase } from "#shared/case/case-schema.ts";
import { differences } from "#shared/case/differences.ts";
import { isNamed, type Json } from "#shared/case/json.ts";
import { readCases } from "#shared/case/read-cases.ts";
import { runCase } from "#shared/case/run-case.ts";

const read = readCases(readFileSync("docs/worked-cases.json", "utf8"));
const cases: readonly WorkedCase[] = read.ok ? read.cases : [];
/** Each is run once, for every test that looks at it. */
const ran = cases.map((worked) => ({ worked, result: runCase(worked, shippedBooks.books) }));

/** The expectation once for each value in it, with that value changed. */
function spoilt(expected: Json): readonly Json[] {
  if (isNamed(expected) && Object.keys(expected).length > 0)
    return Object.entries(expected).flatMap(([name, value]) =>
      spoilt(value).map((changed) => ({ ...expected, [name]: changed })),
    );
  if (Array.isArray(expected) && expected.length > 0)
    return expected.flatMap((value: Json, n) =>
      spoilt(value).map((changed) => expected.toSpliced(n, 1, changed)),
    );
  return ["spoilt on purpose"];
}

describe("the worked cases that are shipped", () => {
  it("are read, are many, and cover every computation", () => {
    expect(read).toMatchObject({ ok: true });
    expect(cases.length).toBeGreaterThanOrEqual(40);
    for (const compute of computes)
      expect(cases.filter((worked) => worked.compute === compute).length, compute).toBeGreaterThan(9);
    expect(cases.filter(({ note }) => note.length < 10)).toEqual([]);
  });

  it.each(ran.map(({ worked, result }) => [worked.name, result] as const))("%s", (_, result) => {
    expect(result.outcome === "cannot run" ? result.refusal : result.differences).toEqual([]);
  });

  it("check something with every value that they expect", () => {
    for (const { worked, result } of ran) {
      const got = result.outcome === "cannot run" ? undefined : result.got;
      for (const wrong of spoilt(worked.expect))
        expect(differences(wrong, got), `${worked.name}: ${JSON.stringify(wrong)}`).toHaveLength(1);
    }
  });
});
