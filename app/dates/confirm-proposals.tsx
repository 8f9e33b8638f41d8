"use client";

import { useRouter } from "next/navigation";
import { type ReactNode, useState } from "react";
import { api } from "#app/_trpc/client.ts";
import { type MovedLine, movedColumns } from "#app/dates/moved-columns.tsx";
import { UndoAct } from "#app/record/undo-act.tsx";
import { type Column, DataTable } from "#app/ui/data-table.tsx";
import { NoticeLine } from "#app/ui/notice-line.tsx";
import { newActId } from "#app/ui/recording/act-id.ts";
import { sendAct } from "#app/ui/recording/send-act.ts";
import { unsavedSentence } from "#app/ui/recording/unsaved-sentence.ts";
import type { Day } from "#shared/day/day.ts";
import { besideWindow, causeWords } from "#shared/words/proposed-days.ts";

type ProposalLine = MovedLine & { readonly id: string; readonly cause: string };

export type ConfirmProposalsProps = {
  readonly lines: readonly ProposalLine[];
  readonly count: number;
  readonly before: number;
  readonly mayConfirm: boolean;
  readonly today: Day;
};

const because: Column<ProposalLine> = {
  head: "Because of",
  cell: (line) => [causeWords(line.cause), besideWindow(line)].filter(Boolean).join(": "),
};

const tubesWords = (tubes: number): string => `${tubes} ${tubes === 1 ? "tube" : "tubes"}`;

type Confirmed = { readonly actId: string; readonly tubes: number };

/** What is proposed, a box beside each; what is checked stands from one press on, all of a tube together. */
export function ConfirmProposals(props: ConfirmProposalsProps): ReactNode {
  const { lines, count, before, mayConfirm, today } = props;
  const router = useRouter();
  const [left, setLeft] = useState<ReadonlySet<string>>(new Set());
  const [actId, setActId] = useState(newActId);
  const [sending, setSending] = useState(false);
  const [confirmed, setConfirmed] = useState<Confirmed | null>(null);
  const [problem, setProblem] = useState<string | null>(null);
  const checked = lines.filter(({ tube }) => !left.has(tube.id));
  const tubes = new Set(checked.map(({ tube }) => tube.id)).size;

  const press = async (): Promise<void> => {
    setSending(true);
    setProblem(null);
    const proposals = checked.map(({ id }) => id);
    const sent = await sendAct(() => api.proposal.confirm.mutate({ actId, proposals }));
    setSending(false);
    if (sent.kind !== "saved")
      return setProblem(
        unsavedSentence(sent, "No answer came from the server. Confirm again: it is done only once."),
      );
    setConfirmed({ actId, tubes: sent.result.tubes });
    setActId(newActId());
    setLeft(new Set());
    router.refresh();
  };

  const toggle = (tubeId: string): void =>
    setLeft((those) => {
      const next = new Set(those);
      if (!next.delete(tubeId)) next.add(tubeId);
      return next;
    });

  const box: Column<ProposalLine> = {
    head: "Let it stand",
    acts: true,
    cell: ({ tube, patient, step }) => (
      <input
        type="checkbox"
        aria-label={`${patient.familyName}, ${tube.name}, ${step}`}
        checked={!left.has(tube.id)}
        onChange={() => toggle(tube.id)}
      />
    ),
  };
  const columns: readonly Column<ProposalLine>[] = [
    ...movedColumns(today),
    because,
    ...(mayConfirm ? [box] : []),
  ];
  return (
    <>
      {confirmed !== null && <Undo key={confirmed.actId} {...confirmed} />}
      <DataTable
        caption="Proposed dates"
        columns={columns}
        rows={lines}
        keyOf={({ id }) => id}
        before={before}
        total={count}
        none="No change of dates is proposed. Every date stands by the newest table and calendar, or would be the same by them."
      />
      {mayConfirm && lines.length > 0 && (
        <NoticeLine>
          <button type="button" disabled={sending || tubes === 0} onClick={() => void press()}>
            Let the new dates of {tubesWords(tubes)} stand
          </button>
          <CheckAll left={left} lines={lines} setLeft={setLeft} />
          {problem !== null && <strong>{problem}</strong>}
        </NoticeLine>
      )}
    </>
  );
}

const Undo = ({ actId, tubes }: Confirmed): ReactNode => (
  <UndoAct said={`The new dates of ${tubesWords(tubes)} stand.`} undoes={actId} />
);

type CheckAllProps = {
  readonly lines: readonly ProposalLine[];
  readonly left: ReadonlySet<string>;
  readonly setLeft: (left: ReadonlySet<string>) => void;
};

function CheckAll({ lines, left, setLeft }: CheckAllProps): ReactNode {
  const all = new Set(lines.map(({ tube }) => tube.id));
  return (
    <>
      {left.size > 0 && (
        <button type="button" onClick={() => setLeft(new Set())}>
          Check all
        </button>
      )}
      {left.size < all.size && (
        <button type="button" onClick={() => setLeft(all)}>
          Check none
        </button>
      )}
    </>
  );
}
