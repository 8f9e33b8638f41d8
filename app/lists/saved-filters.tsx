"use client";

import { useRouter } from "next/navigation";
import { type ReactNode, useState } from "react";
import { api } from "#app/_trpc/client.ts";
import { useScriptRuns } from "#app/import/use-script-runs.ts";
import { sendAct } from "#app/ui/recording/send-act.ts";
import { unsavedSentence } from "#app/ui/recording/unsaved-sentence.ts";
import styles from "./work-list.module.css";

type Saved = { readonly id: string; readonly name: string; readonly href: string };

type SavedFiltersProps = { readonly saved: readonly Saved[] };

/** A person's own filters as links, each with the way to be rid of it. */
export function SavedFilters({ saved }: SavedFiltersProps): ReactNode {
  const router = useRouter();
  const runs = useScriptRuns();
  const [problem, setProblem] = useState<string | null>(null);

  const drop = async (id: string): Promise<void> => {
    setProblem(null);
    const sent = await sendAct(() => api.list.filterDropped.mutate({ id }));
    if (sent.kind === "saved") router.refresh();
    else setProblem(unsavedSentence(sent, "No answer came from the server. Drop it again."));
  };

  return (
    <>
      <ul className={styles.saved} aria-label="Your saved filters">
        {saved.map(({ id, name, href }) => (
          <li key={id}>
            <a href={href}>
              <bdi>{name}</bdi>
            </a>{" "}
            <button type="button" disabled={!runs} aria-label={`Drop ${name}`} onClick={() => void drop(id)}>
              Drop
            </button>
          </li>
        ))}
      </ul>
      {problem !== null && <strong role="alert">{problem}</strong>}
    </>
  );
}
