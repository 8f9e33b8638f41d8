import type { ReactNode } from "react";
import { Now } from "#app/ui/now.tsx";
import type { QuestionInCall } from "#shared/record/call/calling-context.ts";
import { insteadWords } from "#shared/words/call-questions.ts";
import styles from "./call.module.css";

/** What the clinic's row says of an answer, right beneath it: how soon, what holds until then, and whom the local route leads to. */
export function FlagOpened({ question }: { readonly question: QuestionInCall }): ReactNode {
  const { flag, ifSo } = question;
  return (
    <div className={styles.flag} role="status">
      {flag !== null && (
        <p>
          <Now>Red flag, {flag.level}:</Now> {flag.says}.
          {flag.untilReached !== null && ` Until somebody is reached: ${flag.untilReached}.`}
        </p>
      )}
      {ifSo.map(({ of, flag: other }) => (
        <p key={of}>
          Not known: {insteadWords[of]} If so: <Now>{other.level}</Now>, {other.says}.
          {other.untilReached !== null && ` Until somebody is reached: ${other.untilReached}.`}
        </p>
      ))}
    </div>
  );
}
