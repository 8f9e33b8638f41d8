import { day } from "#shared/day/day.ts";
import type { ExchangePlan, PlanRows, PlanTube } from "#shared/fit/exchange-plan.ts";
import { exampleProtocol } from "#shared/protocol/example.ts";
import { findRow } from "#shared/protocol/find-row.ts";
import { tractAges } from "#shared/protocol/tract-ages.ts";
import { confirmed } from "#shared/tube/certainty.ts";
import { cm, coaxial, exampleRows, F } from "#tests/factories/coaxial.ts";
import { inch, takes } from "#tests/factories/tube-inside.ts";

const nephrostomyRow = findRow(exampleProtocol, {
  kind: "nephrostomy",
  factors: [],
  under18: false,
  firstCatheter: true,
});
if (nephrostomyRow.found !== "row") throw new Error("the example has a row for a nephrostomy");

/** The example's row for a nephrostomy: immature under 14 days, mature from 28. */
export const nephrostomyAges = tractAges(nephrostomyRow.row, { route: null, slowToHeal: false });

/** A nephrostomy of 8 F, labelled for 0.038 in, 25 cm long of which 5 are outside; its tract is 77 days old on Fri 30 Oct 2026. */
export const planTube = (said: Partial<PlanTube> = {}): PlanTube => ({
  kind: "nephrostomy",
  size: confirmed(F(8)),
  inside: takes(0.038),
  concerns: [],
  pastLatest: false,
  fullLength: confirmed(cm(25)),
  externalLength: confirmed(cm(5)),
  retention: confirmed("locking loop"),
  tractSince: day("2026-08-14"),
  today: day("2026-10-23"),
  tractAges: nephrostomyAges,
  ...said,
});

/** 8 F again over a wire of 0.035 in and 145 cm, on Fri 30 Oct 2026. */
export const exchangePlan = (said: Partial<ExchangePlan> = {}): ExchangePlan => ({
  on: day("2026-10-30"),
  kind: "nephrostomy",
  wire: coaxial("wire", { outside: inch(0.035), length: cm(145) }),
  toCome: coaxial("tube", { name: "the tube to come", outside: F(8), inside: takes(0.038), length: cm(40) }),
  stiffener: null,
  sheath: null,
  ...said,
});

export const planRows: PlanRows = {
  passage: exampleRows,
  planning: exampleProtocol.planning,
  bleeding: exampleProtocol.bleeding,
};
