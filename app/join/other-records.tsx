"use client";

import { type ReactNode, useRef, useState } from "react";
import { api } from "#app/_trpc/client.ts";
import { OtherRecord, type OtherRecordFound } from "#app/join/other-record.tsx";
import styles from "./join.module.css";

type Answer =
  | { readonly kind: "none asked" | "nothing typed" | "failed" }
  | { readonly kind: "found"; readonly records: readonly OtherRecordFound[] };

const TO_TYPE = "other-number-to-type";

/** Finds another record by its whole number, which stands on the paper in hand. What is typed goes in no address. */
export function OtherRecordByNumber({ patientId }: { readonly patientId: string }): ReactNode {
  const [answer, setAnswer] = useState<Answer>({ kind: "none asked" });
  const field = useRef<HTMLInputElement>(null);

  const ask = async (): Promise<void> => {
    const number = field.current?.value.trim() ?? "";
    if (number === "") {
      setAnswer({ kind: "nothing typed" });
      return field.current?.focus();
    }
    const records = await api.patient.otherRecords.query({ patientId, number }).catch(() => null);
    setAnswer(records === null ? { kind: "failed" } : { kind: "found", records });
  };

  return (
    <form
      className={styles.byNumber}
      onSubmit={(event) => {
        event.preventDefault();
        void ask();
      }}
    >
      <label htmlFor="other-number">Number of the other record, whole</label>
      <input
        ref={field}
        id="other-number"
        type="text"
        autoComplete="off"
        maxLength={60}
        aria-invalid={answer.kind === "nothing typed"}
        aria-describedby={answer.kind === "nothing typed" ? TO_TYPE : undefined}
        onChange={() => setAnswer((old) => (old.kind === "nothing typed" ? { kind: "none asked" } : old))}
      />
      <button type="submit">Find it</button>
      <output htmlFor="other-number">
        <Found answer={answer} patientId={patientId} />
      </output>
    </form>
  );
}

function Found({ answer, patientId }: { readonly answer: Answer; readonly patientId: string }): ReactNode {
  switch (answer.kind) {
    case "none asked":
      return null;
    case "nothing typed":
      return (
        <p className={styles.problem} id={TO_TYPE}>
          Type the whole number that stands on the other record. Names and birth dates are compared below.
        </p>
      );
    case "failed":
      return <p>No answer came from the server. Try again.</p>;
    case "found":
      return answer.records.length === 0 ? (
        <p>No other record has this number. Type it as it stands on the record.</p>
      ) : (
        <ul>
          {answer.records.map((record) => (
            <OtherRecord key={record.id} record={record} patientId={patientId} />
          ))}
        </ul>
      );
  }
}
