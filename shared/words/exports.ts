/** The files of an export, each with what is in it. */
export const exportParts = {
  "record.json":
    "The whole record: everything that was recorded, by whom and when, the protocol and who saw what. Another Dwellbook reads it with npm run import. No passwords.",
  "patients.csv": "Each patient: identity, numbers, how they are reached.",
  "steps.csv": "Each open step: its dates, its owner, and the why behind them.",
  "entries.csv": "Each entry of each story: what happened, when, who recorded it, and whether it stands.",
  "readings.csv": "Each reading of output: drained, flush, net as it comes out of the two.",
} as const;

export type ExportPart = keyof typeof exportParts;
export const exportPartNames = Object.keys(exportParts) as [ExportPart, ...ExportPart[]];
