import { describe, expect, it } from "vitest";
import { exampleProtocol } from "#shared/protocol/example.ts";
import { confirmed } from "#shared/tube/certainty.ts";
import type { TubeKind } from "#shared/tube/kind/kinds.ts";
import { conditionsNoted, exchanged, placed } from "#tests/support/factories.ts";
import { dates, stepAfter, whyCodes } from "#tests/support/steps.ts";

/**
 * Every row of the example table, worked by hand from Fri 14 Aug 2026, Monday to Friday, no closures. The days of each row and their
 * sources stand in shared/tube/kind; the dates here are arithmetic. A target or latest on a weekend moves to the Friday before.
 */
const nephrostomy = placed();
const cancer = placed({ cancerObstruction: confirmed(true) });
const stent = placed({ kind: "ureteral stent" });
const of = (kind: TubeKind, on = "2026-08-14") => placed({ kind, on });
const pregnant = conditionsNoted({ conditions: { pregnancy: confirmed(true) } });
const stoneFormer = conditionsNoted({ conditions: { stoneFormer: confirmed(true) } });

const worked = [
  // 63 / 77 / 90: Fri 16 Oct, Fri 30 Oct, Thu 12 Nov 2026.
  ["nephrostomy", [nephrostomy], "exchange", ["2026-10-16", "2026-10-30", "2026-11-12"]],
  // 42 / 49 / 70: Fri 25 Sep, Fri 2 Oct, Fri 23 Oct 2026.
  ["nephrostomy, cancer obstruction", [cancer], "exchange", ["2026-09-25", "2026-10-02", "2026-10-23"]],
  // 21 / 28 / 42: Fri 4 Sep, Fri 11 Sep, Fri 25 Sep 2026.
  ["nephrostomy, pregnancy", [nephrostomy, pregnant], "exchange", ["2026-09-04", "2026-09-11", "2026-09-25"]],
  // 35 / 42 / 60: Fri 18 Sep, Fri 25 Sep, Tue 13 Oct 2026.
  [
    "nephrostomy, stone former",
    [nephrostomy, stoneFormer],
    "exchange",
    ["2026-09-18", "2026-09-25", "2026-10-13"],
  ],
  // 63 / 77 / 90, as a nephrostomy.
  [
    "nephroureteral catheter",
    [of("nephroureteral catheter")],
    "exchange",
    ["2026-10-16", "2026-10-30", "2026-11-12"],
  ],
  // 56 / 70 / 90: Fri 9 Oct, Fri 23 Oct, Thu 12 Nov 2026.
  [
    "retrograde catheter through a conduit",
    [of("conduit catheter")],
    "exchange",
    ["2026-10-09", "2026-10-23", "2026-11-12"],
  ],
  // First 42 / 63 / 84: Fri 25 Sep, Fri 16 Oct, Fri 6 Nov 2026.
  [
    "suprapubic catheter, first exchange",
    [of("suprapubic catheter")],
    "exchange",
    ["2026-09-25", "2026-10-16", "2026-11-06"],
  ],
  // Then 49 / 63 / 84, counted from the exchange of Fri 14 Aug: Fri 2 Oct, Fri 16 Oct, Fri 6 Nov 2026.
  [
    "suprapubic catheter, then",
    [of("suprapubic catheter", "2026-06-19"), exchanged({ on: "2026-08-14" })],
    "exchange",
    ["2026-10-02", "2026-10-16", "2026-11-06"],
  ],
  // No date of the operator's: due now, Fri 14 Aug; ceiling 90, Thu 12 Nov 2026.
  ["ureteral stent", [stent], "remove or exchange", [null, "2026-08-14", "2026-11-12"]],
  // 21 / 28 / 56: Fri 4 Sep, Fri 11 Sep, Fri 9 Oct 2026.
  ["ureteral stent, pregnancy", [stent, pregnant], "exchange", ["2026-09-04", "2026-09-11", "2026-10-09"]],
  // 300 / 335 / 365: Thu 10 Jun, Thu 15 Jul, Sat 14 Aug 2027.
  [
    "ureteral stent, metal",
    [of("metal ureteral stent")],
    "exchange",
    ["2027-06-10", "2027-07-15", "2027-08-13"],
  ],
  // No date of the operator's: due now; ceiling 120, Sat 12 Dec 2026.
  [
    "plastic biliary stent",
    [of("plastic biliary stent")],
    "remove or exchange",
    [null, "2026-08-14", "2026-12-11"],
  ],
  // Review at 14, Fri 28 Aug; latest 90, Thu 12 Nov 2026.
  ["abscess or fluid drain", [of("abscess drain")], "review", [null, "2026-08-28", "2026-11-12"]],
  // The same.
  ["pancreatic collection drain", [of("pancreatic drain")], "review", [null, "2026-08-28", "2026-11-12"]],
  // Review at 14; latest 60, Tue 13 Oct 2026.
  [
    "lymphocele, seroma or sclerosed collection drain",
    [of("lymphocele drain")],
    "review",
    [null, "2026-08-28", "2026-10-13"],
  ],
  // Review at 7, Fri 21 Aug; latest 60, Tue 13 Oct 2026.
  ["surgical drain taken over", [of("surgical drain")], "review", [null, "2026-08-21", "2026-10-13"]],
  // From Mon 17 Aug: review the next day, Tue 18 Aug; latest 14, Mon 31 Aug 2026.
  ["chest tube", [of("chest tube", "2026-08-17")], "review", [null, "2026-08-18", "2026-08-31"]],
  // Review at 28, Fri 11 Sep 2026; no exchange, so no latest.
  ["tunnelled pleural catheter", [of("tunnelled pleural catheter")], "review", [null, "2026-09-11", null]],
  ["tunnelled peritoneal drain", [of("tunnelled peritoneal drain")], "review", [null, "2026-09-11", null]],
  // 60 / 75 / 90: Tue 13 Oct, Wed 28 Oct, Thu 12 Nov 2026.
  ["cholecystostomy", [of("cholecystostomy")], "exchange", ["2026-10-13", "2026-10-28", "2026-11-12"]],
  // 56 / 70 / 90: Fri 9 Oct, Fri 23 Oct, Thu 12 Nov 2026.
  [
    "external biliary drain",
    [of("external biliary drain")],
    "exchange",
    ["2026-10-09", "2026-10-23", "2026-11-12"],
  ],
  [
    "internal-external biliary drain",
    [of("internal-external biliary drain")],
    "exchange",
    ["2026-10-09", "2026-10-23", "2026-11-12"],
  ],
  // 90 / 150 / 210: Thu 12 Nov 2026, Mon 11 Jan, Fri 12 Mar 2027.
  [
    "balloon gastrostomy",
    [of("balloon gastrostomy")],
    "exchange",
    ["2026-11-12", "2027-01-11", "2027-03-12"],
  ],
  // 80 / 105 / 180: Mon 2 Nov, Fri 27 Nov 2026, Wed 10 Feb 2027.
  ["loop gastrostomy", [of("loop gastrostomy")], "exchange", ["2026-11-02", "2026-11-27", "2027-02-10"]],
  // Review at 365, Sat 14 Aug 2027; latest 730, Sun 13 Aug 2028.
  ["bumper gastrostomy", [of("bumper gastrostomy")], "review", [null, "2027-08-13", "2028-08-11"]],
  // 90 / 120 / 180: Thu 12 Nov, Sat 12 Dec 2026, Wed 10 Feb 2027.
  [
    "venting gastrostomy",
    [of("venting gastrostomy")],
    "exchange",
    ["2026-11-12", "2026-12-11", "2027-02-10"],
  ],
  // 80 / 105 / 180, as a loop gastrostomy.
  ["gastrojejunostomy", [of("gastrojejunostomy")], "exchange", ["2026-11-02", "2026-11-27", "2027-02-10"]],
  // 90 / 135 / 180: Thu 12 Nov, Sun 27 Dec 2026, Wed 10 Feb 2027.
  ["jejunostomy", [of("jejunostomy")], "exchange", ["2026-11-12", "2026-12-25", "2027-02-10"]],
  // 180 / 300 / 365: Wed 10 Feb, Thu 10 Jun, Sat 14 Aug 2027.
  ["cecostomy", [of("cecostomy")], "exchange", ["2027-02-10", "2027-06-10", "2027-08-13"]],
  // No date of the operator's: due now; no ceiling.
  ["other", [of("other")], "remove or exchange", [null, "2026-08-14", null]],
] as const;

describe("the example table, counted from Fri 14 Aug 2026", () => {
  it.each(worked)("%s", (row, entries, kind, three) => {
    const step = stepAfter(entries, kind);
    expect(dates(step)).toEqual(three);
    expect(step.provisional).toBe(false);
    expect(step.why.find(({ code }) => code === "row")?.args.row).toBe(row);
    expect(whyCodes(step)).toContain("row-example");
  });

  it("has a worked case for each row", () => {
    expect(worked.map(([row]) => row).toSorted()).toEqual(
      exampleProtocol.intervals.map(({ id }) => id).toSorted(),
    );
  });
});
