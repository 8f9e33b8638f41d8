import type { Metadata } from "next";
import type { ReactNode } from "react";
import type { SignedIn } from "#app/_trpc/server.ts";
import { signedIn } from "#app/_trpc/server.ts";
import styles from "#app/calls/calls.module.css";
import { PatientCell } from "#app/lists/patient-cell.tsx";
import { fullNameOf } from "#app/patients/identity-of.ts";
import { ClinicNumber } from "#app/tubes/clinic-number.tsx";
import { type Column, DataTable } from "#app/ui/data-table.tsx";
import { PageFrame } from "#app/ui/page-frame.tsx";
import type { Day } from "#shared/day/day.ts";
import { printDay } from "#shared/day/print-day.ts";
import { nextWords, triedWords } from "#shared/words/call-list.ts";
import { flagHolder } from "#shared/words/closing-list.ts";
import { ownerText, stepNames } from "#shared/words/steps.ts";
import { whyInShort } from "#shared/words/why-in-short.ts";

export const metadata: Metadata = { title: "The day's closing list - Dwellbook" };

type Closing = Awaited<ReturnType<SignedIn["api"]["calls"]["closing"]>>;
type Line = Closing["alarms"][number];

const whose: Column<Line> = { head: "Whose", cell: ({ patient }) => <PatientCell patient={patient} /> };
const tube: Column<Line> = { head: "Tube", cell: (line) => <bdi>{line.tube?.name ?? "the patient"}</bdi> };
const why: Column<Line> = { head: "Why", cell: ({ step }) => <bdi>{whyInShort(step.why)}</bdi> };
/** Of a red flag, who has it stands in a column of its own. */
const flagWhy: Column<Line> = {
  head: "Why",
  cell: ({ step }) => <bdi>{whyInShort(step.why.filter(({ code }) => code !== "flag-handed"))}</bdi>,
};
const trialCall = (today: Day): Column<Line> => ({
  head: "Its call",
  cell: ({ step: { dueOn } }) =>
    dueOn > today ? printDay(dueOn) : <strong>not made, due {printDay(dueOn)}</strong>,
});
const owner: Column<Line> = { head: "Who has it overnight", cell: (line) => <Owner line={line} /> };

/** What is still open at the end of the day, and who has it until the next: a page to print. */
export default async function ClosingPage(): Promise<ReactNode> {
  const { api, frame } = await signedIn();
  const list = await api.calls.closing();
  const { flags, trials, out, alarms, calls, today, totals, most, shut, clinic } = list;
  const trial: Column<(typeof trials)[number]> = {
    head: "Who covers",
    cell: ({ covers }) => (covers === null ? <strong>nobody has said</strong> : <bdi>{covers}</bdi>),
  };
  return (
    <PageFrame
      frame={frame}
      heading="What is still open, and who has it overnight?"
      lede={`At ${list.time}`}
      here="Calls"
    >
      {shut !== null && <p className={styles.said}>The clinic is closed today: {shut}.</p>}
      <p className={styles.said}>
        Not for emergencies: red flags go by the local on-call route, which decides.
      </p>
      <div className={styles.parts}>
        <DataTable
          caption="Red flags"
          columns={[
            whose,
            tube,
            flagWhy,
            { head: "Who has it overnight", cell: ({ step }) => <Holder step={step} /> },
          ]}
          rows={flags}
          keyOf={({ step }) => step.id}
          none="No red flag is open."
        />
        <DataTable
          caption="Trials that run"
          columns={[whose, tube, why, trialCall(today), trial]}
          rows={trials}
          keyOf={({ step }) => step.id}
          none="No trial runs."
        />
        <DataTable
          caption="Tubes out, partly out, left behind in part"
          columns={[whose, { head: "What", cell: ({ step }) => stepNames[step.kind] }, tube, why, owner]}
          rows={out}
          keyOf={({ step }) => step.id}
          none="No tube is recorded as out, partly out or left behind in part."
        />
        <DataTable
          caption="Alarms"
          columns={[whose, tube, why, owner]}
          rows={alarms}
          keyOf={({ step }) => step.id}
          none="No alarm stands."
        />
        <DataTable
          caption="Calls due and not made"
          columns={[
            {
              head: "Whose",
              cell: ({ patient }) => <a href={`/patients/${patient.id}/call`}>{fullNameOf(patient)}</a>,
            },
            { head: "Due", cell: (line) => nextWords(line, today) },
            { head: "Tried", cell: ({ story }) => triedWords(story, today) ?? "not yet" },
            { head: "With", cell: ({ holder }) => (holder === null ? null : <bdi>{holder}</bdi>) },
          ]}
          rows={calls}
          keyOf={({ patient }) => patient.id}
          total={totals.calls}
          none="No call that was due is still to be made."
        />
      </div>
      {totals.steps > most && (
        <p>
          Of {totals.steps} red flags, trials, tubes out and alarms {most} stand here: the others stand on
          Today.
        </p>
      )}
      <ClinicNumber clinic={clinic} />
    </PageFrame>
  );
}

function Holder({ step }: Pick<Line, "step">): ReactNode {
  const holder = flagHolder(step);
  return holder === null ? <strong>nobody: hand it to a named person</strong> : <bdi>{holder}</bdi>;
}

/** A role has it; on paper a line for who that is tonight. */
function Owner({ line }: { readonly line: Line }): ReactNode {
  return (
    <>
      {ownerText(line.owner)}
      <span className={styles.blank} data-paper-only />
    </>
  );
}
