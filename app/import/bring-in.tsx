"use client";

import { useRouter } from "next/navigation";
import { type ReactNode, useEffect, useState } from "react";
import { api } from "#app/_trpc/client.ts";
import { NoticeLine } from "#app/ui/notice-line.tsx";
import { newActId } from "#app/ui/recording/act-id.ts";
import { sendAct } from "#app/ui/recording/send-act.ts";
import { unsavedSentence } from "#app/ui/recording/unsaved-sentence.ts";
import { UndoNotice } from "#app/ui/undo-notice.tsx";
import { ASKED_EVERY_MS, type Progress, SAID_FROM_S, writingSentence } from "#shared/sheet/progress.ts";
import styles from "./import.module.css";

type BringInProps = { readonly sheetId: string; readonly tubes: number; readonly rows: number };

type Done = Awaited<ReturnType<typeof api.sheet.bringIn.mutate>>;

const tubesIn = (count: number): string => `${count} ${count === 1 ? "tube" : "tubes"}`;
const patientsIn = (count: number): string => `${count} ${count === 1 ? "patient" : "patients"}`;

const BEGUN: Progress = { read: 0, writesForS: null };

/** How far it is, asked now and then while the list is brought in. While rows are written no answer comes: the last one stands. */
function useProgress(sheetId: string, isWorking: boolean): Progress {
  const [progress, setProgress] = useState(BEGUN);
  useEffect(() => {
    if (!isWorking) return;
    setProgress(BEGUN);
    const asked = setInterval(() => {
      void api.sheet.progress.query({ sheetId }).then(
        (told) => setProgress((before) => told ?? before),
        () => {},
      );
    }, ASKED_EVERY_MS);
    return () => clearInterval(asked);
  }, [sheetId, isWorking]);
  return progress;
}

function ProgressLine({ read, writesForS, rows }: Progress & { readonly rows: number }): ReactNode {
  if (writesForS !== null && writesForS >= SAID_FROM_S)
    return (
      <label>
        <progress /> {writingSentence(writesForS)}
      </label>
    );
  return (
    <label>
      <progress max={rows} value={read} /> {read} of {rows} rows read
    </label>
  );
}

const UNANSWERED = "No answer came from the server. Press again: the list is brought in only once.";

/** Brings in every row that can be, all or none, says how far it is, and offers to take all of it back. */
export function BringIn({ sheetId, tubes, rows }: BringInProps): ReactNode {
  const router = useRouter();
  const [actId] = useState(newActId);
  const [undoId] = useState(newActId);
  const [isWorking, setWorking] = useState(false);
  const [done, setDone] = useState<Done | null>(null);
  const [problem, setProblem] = useState<string | null>(null);
  const progress = useProgress(sheetId, isWorking);

  const press = async (): Promise<void> => {
    setWorking(true);
    setProblem(null);
    const sent = await sendAct(() => api.sheet.bringIn.mutate({ actId, sheetId }));
    setWorking(false);
    if (sent.kind !== "saved") return setProblem(unsavedSentence(sent, UNANSWERED));
    setDone(sent.result);
    router.refresh();
  };

  const undo = async (): Promise<void> => {
    await api.record.undone.mutate({ actId: undoId, undoes: actId });
    router.refresh();
  };

  if (done !== null)
    return (
      <UndoNotice said={`${tubesIn(done.tubes)} of ${patientsIn(done.patients)} brought in.`} undo={undo}>
        <a href="/">To Today, where the loose ends stand</a>
      </UndoNotice>
    );
  if (tubes === 0) return null;
  return (
    <div className={styles.acts}>
      <button type="submit" disabled={isWorking} onClick={() => void press()}>
        Bring in {tubesIn(tubes)}
      </button>
      {isWorking && <ProgressLine {...progress} rows={rows} />}
      {!isWorking && problem === null && <span>All of them in one act, which can be taken back as one.</span>}
      {problem !== null && (
        <NoticeLine>
          <strong>{problem}</strong>
        </NoticeLine>
      )}
    </div>
  );
}
