/** The files of an export, each with what is in it. */
export const exportParts = {
  "record.json":
    "The whole record: everything that was recorded, by whom and when, the protocol, and who saw what, without passwords. Another Dwellbook reads it with npm run import.",
  "patients.csv": "Patients: who they are, their numbers, how they are reached.",
  "tubes.csv":
    "Tubes: what is known of each, in the columns of a clinic's list; another Dwellbook brings it in as one.",
  "steps.csv": "Open steps: their dates, their owners, and the why behind them.",
  "entries.csv": "Every entry: what happened, when, who recorded it, and whether it stands.",
  "shelf.csv":
    "The shelf: every type with its sizes, in the columns of a sheet that the page Shelf brings in.",
  "readings.csv": "Readings of output that stand: drained, flush, and the net of the two.",
} as const;

export type ExportPart = keyof typeof exportParts;
export const exportPartNames = Object.keys(exportParts) as [ExportPart, ...ExportPart[]];
