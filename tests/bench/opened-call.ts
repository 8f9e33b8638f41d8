import type { Database } from "#db/sqlite.ts";
import { viewCall } from "#server/calls/view-call.ts";
import { viewPatient } from "#server/patients/view-patient.ts";
import { loadRecord } from "#server/record/load-record.ts";
import type { Figure } from "#tests/bench/figure.ts";
import { byTurns, percentile } from "#tests/bench/sample.ts";
import { people } from "#tests/support/database.ts";

const TURNS = 100;

/** Tubes of which the patients are taken: to count everybody's entries takes minutes. */
const LOOKED_AT = 4000;

/** Patients whose tubes are in, of some thousands those with the most entries: their pages hold the most. */
export const patientsToCall = (db: Database, count: number): readonly string[] =>
  db.sqlite
    .prepare<[number], string>(
      `select patient_id from events
       where patient_id in (select patient_id from tubes where status = 'in' order by id limit ${LOOKED_AT})
       group by patient_id order by count(*) desc, patient_id limit ?`,
    )
    .pluck()
    .all(count);

/** What a caller's page asks of the server when a call is opened, each time of another patient, against reading the record alone. */
export function openedCallFigure(db: Database, tubes: number): Figure {
  const patients = patientsToCall(db, TURNS);
  if (patients.length < TURNS) throw new Error("too few patients have a tube in");
  const doing = { db, staff: people.caller };
  const turn = { ours: 0, floor: 0 };
  let asked = 0;
  const times = byTurns(
    TURNS,
    () => {
      const patientId = patients[turn.ours++] ?? "";
      asked += viewCall(doing, { patientId }).context.questions.length;
      viewPatient(db, patientId);
    },
    () => {
      loadRecord(db, patients[turn.floor++] ?? "");
    },
  );
  if (asked < TURNS) throw new Error("a call asks nothing");
  return {
    what: `opening a call at ${tubes.toLocaleString("en-US")} tubes in place, p95`,
    value: percentile(times.ours, 95),
    unit: "ms",
    floor: { is: "the patient's record read, p95", value: percentile(times.floor, 95) },
    aim: { kind: "at most", value: 150 },
  };
}
