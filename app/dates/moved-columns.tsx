import { PatientCell } from "#app/lists/patient-cell.tsx";
import { TubeCell } from "#app/lists/tube-cell.tsx";
import type { Column } from "#app/ui/data-table.tsx";
import type { Day } from "#shared/day/day.ts";
import type { StepKind } from "#shared/tube/step-kinds.ts";
import { type WindowInWords, windowWords } from "#shared/words/proposed-days.ts";
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

/** Whose step it is, how it stands and how it would stand. */
export const movedColumns: readonly Column<MovedLine>[] = [
  { head: "Patient", cell: ({ patient }) => <PatientCell patient={patient} /> },
  { head: "Tube", cell: ({ tube }) => <TubeCell tube={tube} /> },
  { head: "Step", cell: ({ step }) => stepNames[step] },
  { head: "Stands at", cell: ({ stood }) => windowWords(stood) },
  { head: "Proposed", cell: ({ proposed }) => windowWords(proposed) },
];
