import type { ListLine } from "#app/lists/list-line.ts";
import type { Frame } from "#app/ui/page-frame.tsx";
import { addDays, day } from "#shared/day/day.ts";

export const constantToday = day("2026-11-06");

const ROWS = 50;
const ago = (days: number) => addDays(constantToday, -days);

/** A nephrostomy past its latest date, as the first lines of the due list are. */
const constantLine = (row: number): ListLine => ({
  step: {
    id: `constant-${row}`,
    tubeId: `tube-${row}`,
    kind: "exchange",
    earliest: ago(80 - row),
    target: ago(66 - row),
    latest: ago(53 - row),
    dueOn: ago(66 - row),
    provisional: false,
    owner: { role: "nurse", staffId: null },
    ownerFrom: ago(80 - row),
    escalatesOn: ago(59 - row),
    physicianOn: ago(52 - row),
    why: [{ code: "row", args: { row: "nephrostomy" }, eventId: null }],
    pins: { protocol: 1, calendar: 1 },
  },
  owner: { role: "nurse", rung: 2, name: null },
  patient: {
    id: `patient-${row}`,
    familyName: "Constantine-Row",
    givenName: "Never",
    number: `0000${row}`,
    birthOn: day("1951-05-17"),
  },
  tube: {
    id: `tube-${row}`,
    name: "Left nephrostomy, 8 F, locking loop",
    clockEarliest: ago(143 - row),
    clockLatest: ago(143 - row),
    plannedOn: null,
    marks: [{ on: ago(100 - row), kind: "checked" }],
  },
  row: "example",
});

export const constantLines = Array.from({ length: ROWS }, (_, row) => constantLine(row));

export const constantFrame: Frame = {
  clinic: "Quillmere Tube Clinic",
  today: "Fri 6 Nov 2026",
  standing: ["EXAMPLE: the protocol's figures are nobody's until an approver of this clinic dates them."],
  person: { userName: "nobody", name: "Nobody Atall", role: "scheduling nurse" },
  session: { idleSeconds: 900, endsInSeconds: 3600 },
  books: [],
};
