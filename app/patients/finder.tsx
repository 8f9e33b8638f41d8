"use client";

import { type ReactNode, useEffect, useRef, useState } from "react";
import { api } from "#app/_trpc/client.ts";
import { printBirth } from "#shared/day/print-day.ts";
import styles from "./finder.module.css";

type Found = Awaited<ReturnType<typeof api.patient.find.query>>;

/** Whom a search found, or that it has not come yet or could not be made. */
type Answer =
  | { readonly kind: "none asked" | "failed" }
  | { readonly kind: "found"; readonly patients: Found };

const PAUSE_MS = 150;

/** Finds by part of a name or number as it is typed. What is typed goes in the body of a request, never into an address. */
export function Finder(): ReactNode {
  const [answer, setAnswer] = useState<Answer>({ kind: "none asked" });
  const field = useRef<HTMLInputElement>(null);
  const timer = useRef<ReturnType<typeof setTimeout>>(undefined);

  const ask = async (): Promise<void> => {
    const typed = field.current?.value ?? "";
    if (typed.trim() === "") return setAnswer({ kind: "none asked" });
    const patients = await api.patient.find.query({ typed }).catch(() => null);
    // An older answer that comes late must not stand under what has been typed since.
    if (field.current?.value !== typed) return;
    setAnswer(patients === null ? { kind: "failed" } : { kind: "found", patients });
  };
  const typing = (): void => {
    clearTimeout(timer.current);
    timer.current = setTimeout(() => void ask(), PAUSE_MS);
  };
  /** Enter goes on where only one patient can be meant. */
  const goToOnly = (): void => {
    const [only, other] = answer.kind === "found" ? answer.patients : [];
    if (only !== undefined && other === undefined) location.assign(`/patients/${only.id}`);
  };
  useEffect(() => {
    field.current?.focus();
    return () => clearTimeout(timer.current);
  }, []);

  return (
    <search>
      <label className={styles.label} htmlFor="find">
        Name or record number
      </label>
      <input
        onKeyDown={(event) => {
          if (event.key === "Enter") goToOnly();
        }}
        ref={field}
        id="find"
        className={styles.field}
        type="text"
        autoComplete="off"
        onInput={typing}
      />
      <output className={styles.found} htmlFor="find">
        <Matches answer={answer} />
      </output>
    </search>
  );
}

function Matches({ answer }: { readonly answer: Answer }): ReactNode {
  switch (answer.kind) {
    case "none asked":
      return null;
    case "failed":
      return "No answer came from the server. Type again.";
    case "found":
      return answer.patients.length === 0 ? (
        "Nobody by that name or number."
      ) : (
        <Patients of={answer.patients} />
      );
  }
}

function Patients({ of }: { readonly of: Found }): ReactNode {
  return (
    <ul>
      {of.map(({ id, familyName, givenName, number, birthOn }) => (
        <li key={id}>
          <a href={`/patients/${id}`}>
            <bdi>
              {familyName}, {givenName}
            </bdi>
          </a>{" "}
          <bdi>{number}</bdi>, {birthOn === null ? "birth date unknown" : `born ${printBirth(birthOn)}`}
        </li>
      ))}
    </ul>
  );
}
