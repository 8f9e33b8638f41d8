"use client";

import { type ReactNode, useEffect, useRef } from "react";
import { fieldId } from "#app/ui/field.tsx";
import styles from "./error-summary.module.css";

export type Problem = {
  readonly field?: string | undefined;
  readonly sentence: string;
  /** Where its field stands, where several have the same name: "Row 3". */
  readonly where?: string | undefined;
  /** Where to look at what it speaks of. Opens beside the form, which keeps what is typed. */
  readonly look?: { readonly href: string; readonly word: string } | undefined;
};

type ErrorSummaryProps = {
  readonly problems: readonly Problem[];
  /** Counts the tries to save, so that the summary takes the focus again when the same thing is still to mend. */
  readonly attempt?: number;
};

/** What is to mend, on top: takes the focus, and each sentence leads to its field. */
export function ErrorSummary({ problems, attempt = 0 }: ErrorSummaryProps): ReactNode {
  const summary = useRef<HTMLElement>(null);
  useEffect(() => {
    if (attempt >= 0) summary.current?.focus();
  }, [attempt]);

  if (problems.length === 0) return null;
  return (
    <section ref={summary} className={styles.summary} tabIndex={-1} aria-labelledby="to-mend">
      <h2 className={styles.heading} id="to-mend">
        {problems.length === 1 ? "One thing to mend" : `${problems.length} things to mend`}
      </h2>
      <ul>
        {problems.map(({ field, sentence, where, look }) => (
          <li key={`${field ?? ""} ${sentence}`}>
            {where !== undefined && `${where}: `}
            {field === undefined ? sentence : <a href={`#${fieldId(field)}`}>{sentence}</a>}
            {look !== undefined && (
              <>
                {" "}
                <a href={look.href} target="_blank" rel="noreferrer">
                  {look.word}
                </a>
              </>
            )}
          </li>
        ))}
      </ul>
    </section>
  );
}
