"use client";

import { type ReactNode, useState } from "react";
import { bringSheet, type SentSheet } from "#app/shelf/send-sheet.ts";
import { ShelfDone } from "#app/shelf/shelf-done.tsx";
import { type BroughtToShelf, rowsThat, type ShelfPreview } from "#app/shelf/shelf-preview.ts";
import { newActId } from "#app/ui/recording/act-id.ts";
import styles from "./shelf.module.css";

const types = (count: number): string => `${count} ${count === 1 ? "type" : "types"}`;

type BringSheetProps = { readonly sheet: SentSheet; readonly preview: ShelfPreview };

function saidOf({ added, changed, setAside }: BroughtToShelf): string {
  const parts = [
    `${types(added)} added`,
    changed > 0 && `${changed} changed`,
    setAside > 0 && `${setAside} set aside`,
  ];
  return `${parts.filter(Boolean).join(", ")}.`;
}

/** Brings what was shown onto the shelf, all of it in one act, and offers to take it back. */
export function BringSheet({ sheet, preview }: BringSheetProps): ReactNode {
  const [changes, setChanges] = useState(false);
  const [actIds] = useState(() => ({ leaving: newActId(), changing: newActId() }));
  const [isWorking, setWorking] = useState(false);
  const [done, setDone] = useState<BroughtToShelf | null>(null);
  const [problem, setProblem] = useState<string | null>(null);
  const [fresh, changed] = [rowsThat(preview, "new").length, rowsThat(preview, "changes").length];
  const count = fresh + (changes ? changed : 0);

  const press = async (): Promise<void> => {
    setWorking(true);
    setProblem(null);
    const actId = changes ? actIds.changing : actIds.leaving;
    const answer = await bringSheet(sheet, { actId, changes });
    setWorking(false);
    if (answer.ok) setDone(answer.said);
    else setProblem(answer.problem.sentence);
  };

  if (fresh + changed === 0 && done === null)
    return <p className={styles.acts}>Nothing of this sheet changes the shelf.</p>;
  if (done !== null) return <ShelfDone said={saidOf(done)} actId={done.actId} />;
  return (
    <div className={styles.acts}>
      {changed > 0 && (
        <label className={styles.choice}>
          <input type="checkbox" checked={changes} onChange={(event) => setChanges(event.target.checked)} />
          Change the {types(changed)} that the shelf has under the same name
        </label>
      )}
      <button type="submit" disabled={isWorking || count === 0} onClick={() => void press()}>
        {isWorking ? "Bringing in" : `Bring in ${types(count)}`}
      </button>
      {problem === null ? (
        <span>All of them in one act, which can be taken back as one.</span>
      ) : (
        <strong role="alert">{problem}</strong>
      )}
    </div>
  );
}
