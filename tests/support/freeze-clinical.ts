import { day } from "#shared/day/day.ts";
import { confirmed, unknownFact } from "#shared/tube/certainty.ts";
import * as make from "#tests/support/factories.ts";
import { patient } from "#tests/support/freeze-patient.ts";

const figure = (value: number, asTyped: string | null = null) => confirmed({ value, asTyped });

/** How a patient is, told and found. */
export const clinicalPatients = [
  patient(
    "clinical states, the newest of each item, one put right",
    "1958-04-12",
    make.placed({ kind: "abscess drain", side: "not sided", size: make.F(12), on: "2026-05-04" }),
    make.clinicalStateNoted({
      on: "2026-05-06",
      at: "08:00",
      toldBy: "the patient",
      findings: {
        temperature: { certainty: "reported", value: { value: 38.61, asTyped: "101.5 F" } },
        chills: { certainty: "reported", value: true },
        feels: { certainty: "reported", value: "unwell" },
        pain: figure(4),
      },
    }),
    make.clinicalStateNoted({
      id: "bloods",
      on: "2026-05-08",
      findings: {
        temperature: figure(36.9),
        chills: unknownFact,
        whiteCells: figure(12.5),
        crp: figure(90, "9 mg/dL"),
        creatinine: figure(88),
        bilirubin: figure(12),
        sodium: figure(139),
        potassium: figure(4.1),
        culture: confirmed("awaited"),
        antibioticsUntil: confirmed(day("2026-05-15")),
        imaging: confirmed({ on: day("2026-05-07"), finding: "smaller", words: "3 cm" }),
        coughOrBreathlessness: confirmed(false),
        jaundice: confirmed(false),
        voidedVolume: figure(1500),
      },
    }),
    make.amended("bloods", make.clinicalStateNoted({ on: "2026-05-08", at: "07:30" }), { on: "2026-05-09" }),
    make.clinicalStateNoted({
      on: "2026-05-10",
      findings: { imaging: confirmed({ on: day("2026-05-03"), finding: "other", words: "before it" }) },
      note: "an older film",
    }),
  ),
  patient(
    "capped, feverish, opened again, and nobody has closed the alarm",
    "1958-04-12",
    make.placed({ kind: "internal-external biliary drain", side: "right", on: "2026-05-04" }),
    make.capped({ on: "2026-05-20", at: "12:00" }),
    make.clinicalStateNoted({
      on: "2026-05-21",
      at: "09:00",
      findings: { temperature: figure(38.4), jaundice: confirmed(true) },
    }),
    make.uncapped({ on: "2026-05-21", at: "10:00" }),
  ),
];
