import type { ReactNode } from "react";
import cells from "#app/lists/cells.module.css";
import { PatientCell } from "#app/lists/patient-cell.tsx";
import { TubeCell } from "#app/lists/tube-cell.tsx";
import type { Column } from "#app/ui/data-table.tsx";
import { Now } from "#app/ui/now.tsx";
import type { Day } from "#shared/day/day.ts";
import { printDay } from "#shared/day/print-day.ts";
import type { StepKind } from "#shared/tube/step-kinds.ts";
import { besideWindow, type WindowInWords } from "#shared/words/proposed-days.ts";
import { stepNames } from "#shared/words/steps.ts";

/** One step of one tube that would move. */
export type MovedLine = {
  readonly patient: {
    readonly id: string;
    readonly familyName: string;
    readonly givenName: string;
    readonly birthOn: Day | null;
    readonly number: string | null;
  };
  readonly tube: { readonly id: string; readonly name: string };
  readonly step: StepKind;
  readonly stood: WindowInWords | null;
  readonly proposed: WindowInWords | null;
};

type End = "earliestOn" | "targetOn" | "latestOn";

const dayWords = (on: Day | null | undefined): string => (on ? printDay(on) : "none");

type MovedDayProps = { readonly line: MovedLine; readonly end: End; readonly today: Day };

/** The day that is proposed, and beneath it the one that stands where it is another. A latest day that would be over needs somebody now. */
function MovedDay({ line, end, today }: MovedDayProps): ReactNode {
  const stood = line.stood?.[end] ?? null;
  const proposed = line.proposed?.[end] ?? null;
  if (stood === proposed) return dayWords(proposed);
  return (
    <>
      <span className={cells.name}>
        {end === "latestOn" && proposed !== null && proposed < today ? (
          <Now>{dayWords(proposed)}: past</Now>
        ) : (
          dayWords(proposed)
        )}
      </span>{" "}
      <span className={cells.detail}>now {dayWords(stood)}</span>
    </>
  );
}

/** Whose step it is, its days as they are proposed and as they stand. */
export function movedColumns(today: Day): readonly Column<MovedLine>[] {
  const dayColumn = (head: string, end: End): Column<MovedLine> => ({
    head,
    cell: (line) => <MovedDay line={line} end={end} today={today} />,
  });
  return [
    { head: "Patient", cell: ({ patient }) => <PatientCell patient={patient} /> },
    { head: "Tube", cell: ({ tube }) => <TubeCell tube={tube} /> },
    { head: "Step", cell: ({ step }) => stepNames[step] },
    dayColumn("Earliest", "earliestOn"),
    dayColumn("Target", "targetOn"),
    dayColumn("Latest", "latestOn"),
  ];
}

/** What moves beside the window. */
export const besideColumn: Column<MovedLine> = { head: "Beside", cell: besideWindow };
