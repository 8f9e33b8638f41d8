import type { ReactNode } from "react";
import type { ListLine } from "#app/lists/list-line.ts";
import { PatientCell } from "#app/lists/patient-cell.tsx";
import { StandingCell } from "#app/lists/standing-cell.tsx";
import { TubeCell } from "#app/lists/tube-cell.tsx";
import { asksBirthDate, BirthDateLink } from "#app/patients/birth-date-link.tsx";
import { formOfStep, patientFormOfStep } from "#app/record/offered.ts";
import { mayRecord, patientFormHref, tubeFormHref } from "#app/record/procedures.ts";
import { stepPage } from "#app/record/step-page.ts";
import { type Column, DataTable } from "#app/ui/data-table.tsx";
import type { Person } from "#shared/access/person.ts";
import type { Day } from "#shared/day/day.ts";
import { actLabels } from "#shared/words/acts.ts";
import { ownerText, stepNames } from "#shared/words/steps.ts";

type StepsTableProps = {
  readonly caption: string;
  readonly lines: readonly ListLine[];
  readonly total: number;
  readonly none: string;
  readonly today: Day;
  readonly person: Person;
  readonly marksExample: boolean;
  /** How many stand before the first of these lines. */
  readonly before?: number;
  /** Where all of them stand, where not all are shown here. */
  readonly allHref?: string;
};

/** Open steps under one another: what, whose, why now, with whom, and the one act that each needs. */
export function StepsTable(props: StepsTableProps): ReactNode {
  const { caption, lines, total, none, today, person, marksExample, before, allHref } = props;
  return (
    <div>
      <DataTable
        caption={caption}
        columns={stepColumns({ today, person, marksExample })}
        rows={lines}
        keyOf={({ step }) => step.id}
        before={before}
        total={total}
        none={none}
      />
      {allHref !== undefined && total > lines.length && (
        <p data-screen-only>
          {lines.length} of {total} stand here. <a href={allHref}>Show all {total}</a>
        </p>
      )}
    </div>
  );
}

/** What stands of an open step in a list: what, whose, why now, with whom, and the act that it needs. */
export const stepColumns = ({
  today,
  person,
  marksExample,
}: Pick<StepsTableProps, "today" | "person" | "marksExample">): readonly Column<ListLine>[] => [
  { head: "What", cell: ({ step }) => stepNames[step.kind] },
  { head: "Whose", cell: ({ patient }) => <PatientCell patient={patient} /> },
  { head: "Tube", cell: ({ tube, visit }) => <TubeCell tube={tube} several={visit?.tubes} /> },
  { head: "Why now", cell: (line) => <StandingCell {...{ line, today, marksExample }} /> },
  { head: "Owner", cell: ({ owner }) => ownerText(owner) },
  { head: "Act", cell: (line) => <ActLink line={line} person={person} /> },
];

/** Leads to the form that the step most likely ends in, or, for who may not record it, to where it is seen. */
function ActLink({ line, person }: { readonly line: ListLine; readonly person: Person }): ReactNode {
  const { step, tube, patient } = line;
  const ofPatient = patientFormOfStep[step.kind];
  if (ofPatient !== undefined && mayRecord(person, ofPatient))
    return <a href={patientFormHref(patient.id, ofPatient)}>{actLabels[ofPatient]}</a>;
  const page = stepPage(step, patient.id);
  if (page !== null) return <a href={page.href}>{page.word}</a>;
  if (asksBirthDate(step)) return <BirthDateLink patientId={patient.id} person={person} />;
  if (tube === null) return <a href={`/patients/${patient.id}`}>Open the patient</a>;
  const form = formOfStep[step.kind];
  if (form === null) return <a href={`/tubes/${tube.id}#story`}>Open the story</a>;
  if (!mayRecord(person, form)) return <a href={`/tubes/${tube.id}`}>Open the tube</a>;
  return <a href={tubeFormHref(tube.id, form)}>{actLabels[form]}</a>;
}
