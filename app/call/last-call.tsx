import type { ReactNode } from "react";
import type { CallPage } from "#app/call/call-page.ts";
import { printWhen } from "#shared/day/print-day.ts";

/** What was told when somebody was last reached. */
export function LastCall({ last }: { readonly last: CallPage["lastCall"] }): ReactNode {
  if (last === null) return <p>Nobody was reached before, by this record.</p>;
  const { when, time, outcome, note, answers } = last;
  const told = answers.map(
    ({ asks, of, says }) => `${of === null ? "" : `tube ${of.number}: `}${asks} ${says}`,
  );
  return (
    <details>
      <summary>
        Last reached {printWhen(when)}
        {time !== null && `, ${time}`}: {outcome}. {note ?? ""}
      </summary>
      {told.length === 0 ? <p>No question was answered.</p> : <p>{told.join("; ")}.</p>}
    </details>
  );
}
