import { concentration } from "#shared/review/concentration.ts";
import { unknownFact } from "#shared/tube/certainty.ts";
import { fluidResult, found, withoutUnit } from "#tests/factories/fluid-test.ts";
import * as make from "#tests/support/factories.ts";
import { patient } from "#tests/support/freeze-patient.ts";

/** Every shape of a value: confirmed, told, estimated, converted, without a unit, unknown; serum of the day and of another. */
const tested = patient(
  "a drain whose fluid was tested three times",
  "1958-08-18",
  make.placed({ kind: "abscess drain", side: "not sided", on: "2026-03-02" }),
  make.fluidTested({
    on: "2026-03-05",
    results: [
      fluidResult({ analyte: "amylase", fluid: found(4200), serum: null, upperLimit: found(100) }),
      fluidResult({
        fluid: { certainty: "estimated", value: { level: concentration(85.52), asTyped: "~5 mg/dL" } },
      }),
    ],
  }),
  make.fluidTested({
    on: "2026-03-07",
    results: [fluidResult({ analyte: "creatinine", fluid: withoutUnit(9), serum: unknownFact })],
    serumOn: make.when("2026-03-06"),
  }),
  make.exchanged({ on: "2026-03-09" }),
  make.fluidTested({
    on: "2026-03-11",
    results: [
      fluidResult({
        analyte: "triglyceride",
        fluid: { certainty: "reported", value: { level: concentration(1.3), asTyped: null } },
        serum: null,
      }),
      fluidResult({ fluid: found(40) }),
    ],
    toldBy: "the ward",
    note: "milky",
  }),
);

export const fluidPatients = [tested];
