import { minute, NONE, patientColumns, UNKNOWN, yesNo } from "#server/export/csv/cells.ts";
import type { CsvTable } from "#server/export/csv/csv-table.ts";
import { eachPatient } from "#server/export/csv/each-patient.ts";
import { type OutputView, viewOutput } from "#server/output/view-output.ts";
import type { PatientView } from "#server/patients/view-patient.ts";
import { toMl } from "#shared/output/microlitre.ts";
import { type NetVolume, netVolume } from "#shared/output/net-volume.ts";
import type { Flush, Reading } from "#shared/output/reading.ts";
import { tubeName } from "#shared/tube/name.ts";
import { netSentence } from "#shared/words/output.ts";

type Row = PatientView &
  Pick<OutputView, "zone"> & {
    readonly tube: string;
    readonly read: OutputView["readings"][number];
    readonly net: NetVolume;
  };

function flushMl(flush: Flush): string | number {
  if (flush === "none") return 0;
  if (flush === "not recorded") return flush;
  return flush.estimated ? `about ${toMl(flush.ul)}` : toMl(flush.ul);
}

function drainedMl({ read }: Row): string | number {
  const { gross } = read.reading;
  return gross.certainty === "unknown" ? UNKNOWN : toMl(gross.value);
}

const symptomsCell = (symptoms: Reading["symptoms"]): string =>
  typeof symptoms === "string" ? symptoms : symptoms.join("; ") || NONE;

/** Readings that stand, oldest first; their volumes as recorded, and the net that comes of them. Days by the clock of `zone`. */
export const readingsTable: CsvTable<Row> = {
  columns: {
    ...patientColumns,
    tube: ({ tube }) => tube,
    since: ({ read: { reading } }) =>
      reading.from === "since last emptying" ? reading.from : minute(reading.from, reading.zone),
    "emptied at": ({ read: { reading } }) => minute(reading.to, reading.zone),
    zone: ({ read: { reading } }) => reading.zone,
    "drained mL": drainedMl,
    "drained, how known": ({ read: { reading } }) => reading.gross.certainty,
    "drained is": ({ read: { reading } }) => reading.basis,
    "flush given mL": ({ read: { reading } }) => flushMl(reading.flushGiven),
    "flush drawn back mL": ({ read: { reading } }) => flushMl(reading.flushWithdrawn),
    "net mL": ({ net }) => (net.kind === "known" ? toMl(net.ul) : net.kind),
    "why net cannot be told": ({ net }) => (net.kind === "known" ? "" : netSentence(net)),
    "other fluid put in": ({ read: { reading } }) =>
      reading.otherIn.map(({ fluid, ul }) => `${fluid} ${toMl(ul)} mL`).join("; ") || NONE,
    seen: ({ read: { reading } }) => reading.characters.join("; ") || "not recorded",
    "leak round the tube": ({ read: { reading } }) => reading.leak,
    "air leak": ({ read: { reading } }) => reading.airLeak,
    swing: ({ read: { reading } }) => reading.swing,
    "felt during it": ({ read: { reading } }) => symptomsCell(reading.symptoms),
    "drawn off at the procedure": ({ read: { reading } }) => yesNo(reading.procedureAspirate),
    "measured by": ({ read: { reading } }) => reading.measuredBy,
    "as typed": ({ read: { reading } }) => reading.asSpoken,
    "told by": ({ read: { reading } }) => reading.reportedBy,
    recorded: ({ read, zone }) => minute(read.recordedAt, zone),
    "recorded by": ({ read }) => read.by,
  },
  *rows(db) {
    for (const view of eachPatient(db)) {
      for (const tube of view.state.tubes) {
        const { readings, flushOrdered, zone } = viewOutput(db, tube.id);
        for (const read of readings.toReversed())
          yield { ...view, zone, tube: tubeName(tube), read, net: netVolume(read.reading, flushOrdered) };
      }
    }
  },
};
