"use client";

import { type ReactNode, useState } from "react";
import { UndoAct } from "#app/record/undo-act.tsx";
import { newActId } from "#app/ui/recording/act-id.ts";
import {
  type BroughtBookings,
  bringList,
  type HospitalPreview,
  rowsThat,
  type SentList,
} from "#app/visits/hospital-list/hospital-preview.ts";
import styles from "./hospital-list.module.css";

const bookings = (count: number): string => `${count} ${count === 1 ? "booking" : "bookings"}`;

function saidOf({ booked, moved, known, asked, setAside }: BroughtBookings): string {
  const parts = [
    `${bookings(booked)} entered`,
    moved > 0 && `${moved} moved`,
    known > 0 && `${known} known already`,
    asked > 0 && `${asked} not chosen and left out`,
    setAside > 0 && `${setAside} set aside`,
  ];
  return `${parts.filter(Boolean).join(", ")}.`;
}

type BringBookingsProps = { readonly list: SentList; readonly preview: HospitalPreview };

/** Brings in what was shown, all of it in one act, and offers to take it back. */
export function BringBookings({ list, preview }: BringBookingsProps): ReactNode {
  const [actId] = useState(newActId);
  const [isWorking, setWorking] = useState(false);
  const [done, setDone] = useState<BroughtBookings | null>(null);
  const [problem, setProblem] = useState<string | null>(null);
  const count = rowsThat(preview, "books").length + rowsThat(preview, "moves").length;

  const press = async (): Promise<void> => {
    setWorking(true);
    setProblem(null);
    const answer = await bringList(list, actId);
    setWorking(false);
    if (answer.ok) setDone(answer.said);
    else setProblem(answer.problem.sentence);
  };

  if (done !== null)
    return (
      <UndoAct said={saidOf(done)} undoes={done.actId}>
        <a href="/lists/unconfirmed">To the visits that nobody has confirmed</a>
        <a href="/exchanges?visit=without">To the tubes without a visit</a>
      </UndoAct>
    );
  if (count === 0) return <p className={styles.acts}>Nothing in this list is to be booked or moved yet.</p>;
  return (
    <div className={styles.acts}>
      <button type="submit" disabled={isWorking} onClick={() => void press()}>
        {isWorking ? "Bringing in" : `Bring in ${bookings(count)}`}
      </button>
      {problem === null ? (
        <span>All of them in one act, which can be taken back as one.</span>
      ) : (
        <strong role="alert">{problem}</strong>
      )}
    </div>
  );
}
