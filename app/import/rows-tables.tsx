import type { ReactNode } from "react";
import type { ImportView } from "#app/import/import-view.ts";
import { fullNameOf } from "#app/patients/identity-of.ts";
import { DataTable } from "#app/ui/data-table.tsx";
import { printBirth, printDay, printWhen } from "#shared/day/print-day.ts";
import { printPlan } from "#shared/words/plan.ts";
import { numberText, patientSays, tubeSays } from "#shared/words/row-preview.ts";
import { standingBesideName, stepNames } from "#shared/words/steps.ts";
import styles from "./import.module.css";

/** The first cells of a row, enough to know it by. */
const KNOWN_BY = 5;

type Coming = ImportView["coming"][number];

/** Rows that have to be mended first, each with everything that is wrong. */
export function AsideTable({ view }: { readonly view: ImportView }): ReactNode {
  return (
    <DataTable
      caption="Set aside"
      columns={[
        { head: "Row", cell: ({ row }) => row },
        {
          head: "Says",
          cell: ({ cells }) => (
            <bdi className={styles.samples}>
              {cells
                .filter((cell) => cell.trim() !== "")
                .slice(0, KNOWN_BY)
                .join(" · ")}
            </bdi>
          ),
        },
        {
          head: "What to mend",
          cell: ({ reasons }) => (
            <ul className={styles.reasons}>
              {reasons.map(({ heading, sentence }) => (
                <li key={`${heading} ${sentence}`}>
                  {heading !== null && <strong>{heading}: </strong>}
                  {sentence}
                </li>
              ))}
            </ul>
          ),
        },
      ]}
      rows={view.aside}
      keyOf={({ row }) => String(row)}
      total={view.counts.aside}
      none="No row is set aside."
    />
  );
}

function besideWords({ beside }: Coming): string {
  const { besideRows, alikeRows, alikeHere } = beside;
  const said = [
    besideRows.length > 0 && `other tubes in row ${besideRows.join(", ")}`,
    alikeRows.length > 0 && `same name and birth date as row ${alikeRows.join(", ")}: asked after`,
    alikeHere && alikeRows.length === 0 && "same name and birth date as another record here: asked after",
  ];
  return said.filter(Boolean).join("; ");
}

const clockWords = ({ tube }: Coming): string => {
  const since = [printWhen(tube.since), tube.time].filter(Boolean).join(", ");
  const tract = printWhen(tube.tractSince);
  return tract === printWhen(tube.since) ? since : `${since}; tract ${tract}`;
};

type PatientCellProps = { readonly line: Coming; readonly issuer: string };

function PatientCell({ line, issuer }: PatientCellProps): ReactNode {
  const { patient } = line;
  const [number] = patient.identifiers;
  const beside = besideWords(line);
  return (
    <>
      <bdi>{fullNameOf(patient)}</bdi>, {number !== undefined && numberText(number, issuer)},{" "}
      {patient.birthOn === null ? "born ?" : printBirth(patient.birthOn)}
      <div className={styles.soft}>
        <bdi>
          {patient.isHere
            ? "has a record here already, which keeps its own telephones and contacts"
            : patientSays(patient, issuer).join("; ")}
        </bdi>
      </div>
      {beside !== "" && <div>{beside}</div>}
    </>
  );
}

function TubeCell({ tube: { name, opening } }: Pick<Coming, "tube">): ReactNode {
  const says = tubeSays(opening);
  return (
    <>
      {name}
      {says.length > 0 && (
        <div className={styles.soft}>
          <bdi>{says.join("; ")}</bdi>
        </div>
      )}
      {opening.note !== undefined && (
        <div className={styles.note}>
          <bdi>{opening.note}</bdi>
        </div>
      )}
    </>
  );
}

/** Every row that comes in, as it will stand. */
export function ComingTable({ view }: { readonly view: ImportView }): ReactNode {
  const { coming, today, answers } = view;
  return (
    <DataTable
      caption="Coming in, as they will stand"
      columns={[
        { head: "Row", cell: ({ row }) => row },
        { head: "Patient", cell: (line) => <PatientCell line={line} issuer={answers.issuer} /> },
        { head: "Tube", cell: ({ tube }) => <TubeCell tube={tube} /> },
        { head: "In since", cell: clockWords },
        {
          head: "Plan",
          cell: ({ tube: { opening } }) =>
            opening.plan === null ? "the protocol's row" : printPlan(opening.plan),
        },
        {
          head: "First step",
          cell: ({ step }) =>
            step === null
              ? ""
              : `${stepNames[step.kind]}, ${printDay(step.dueOn)}: ${standingBesideName(step, today)}`,
        },
      ]}
      rows={coming}
      keyOf={({ row }) => String(row)}
      total={view.counts.coming}
      none="No row comes in as the list stands."
    />
  );
}
