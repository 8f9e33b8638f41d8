import type { ListLine } from "#app/lists/list-line.ts";
import type { Frame } from "#app/ui/page-frame.tsx";
import { addDays, day } from "#shared/day/day.ts";

export const constantToday = day("2026-11-06");

const ROWS = 50;
const ago = (days: number) => addDays(constantToday, -days);

/** A stent past its latest date, as the first lines of a long due list are. */
const constantLine = (row: number): ListLine => ({
  step: {
    id: `constant-${row}`,
    tubeId: `tube-${row}`,
    kind: "remove",
    earliest: null,
    target: ago(120 - row),
    latest: ago(95 - row),
    dueOn: ago(120 - row),
    provisional: false,
    owner: { role: "physician", staffId: null },
    ownerFrom: ago(120 - row),
    escalatesOn: ago(117 - row),
    physicianOn: ago(94 - row),
    why: [{ code: "row-example", args: {}, eventId: null }],
    pins: { protocol: 1, calendar: 1 },
  },
  owner: { role: "physician", rung: 2, name: null },
  patient: {
    id: `patient-${row}`.padEnd(22, "0"),
    familyName: "Constantine-Row",
    givenName: "Neverwhere",
    number: String(row).padStart(7, "0"),
    birthOn: day("1951-05-17"),
  },
  tube: {
    id: `tube-${row}`.padEnd(22, "0"),
    name: "Left ureteral stent, 6 F",
    clockEarliest: ago(185 - row),
    clockLatest: ago(185 - row),
    plannedOn: null,
    marks: [],
  },
  visit: null,
  row: "example",
});

export const constantLines = Array.from({ length: ROWS }, (_, row) => constantLine(row));

export const constantFrame: Frame = {
  clinic: "Quillmere Tube Clinic",
  today: "Fri 6 Nov 2026",
  standing: ["EXAMPLE: the protocol's figures are nobody's until an approver of this clinic dates them."],
  isExample: true,
  unhanded: null,
  person: { userName: "nobody", name: "Nobody Atall", role: "scheduling nurse" },
  session: { idleSeconds: 900, endsInSeconds: 3600 },
  books: [],
};
