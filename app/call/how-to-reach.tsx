import type { ReactNode } from "react";
import type { CallLog } from "#shared/call/call-log.ts";
import type { There } from "#shared/call/reach.ts";
import type { Contact } from "#shared/record/patient/patient-details.ts";
import { interpreterWords, thereNowWords } from "#shared/words/call-list.ts";
import { capital } from "#shared/words/capital.ts";
import { mayBeToldText } from "#shared/words/contact.ts";
import { triedText, triesText } from "#shared/words/tries.ts";
import styles from "./call.module.css";

type HowToReachProps = {
  readonly contact: Contact;
  readonly calls: CallLog;
  readonly language: string;
  readonly needsInterpreter: boolean | null;
  readonly there: There | null;
};

type Line = { readonly number: string; readonly whose: string; readonly times: string | null };

const linesOf = ({ telephones, alternate }: Contact): readonly Line[] => [
  ...telephones.map(({ number, bestTimes }) => ({ number, whose: "the patient", times: bestTimes })),
  ...(alternate?.telephone == null
    ? []
    : [
        {
          number: alternate.telephone,
          whose: [alternate.name, mayBeToldText(alternate.mayBeTold)].join(", "),
          times: null,
        },
      ]),
];

/** What happened on a number since somebody was last reached. */
const onNumber = ({ tries, wrong }: CallLog, number: string): string => {
  const here = tries.filter((tried) => tried.by === "telephone" && tried.number === number);
  const said = here.map(triedText).join("; ");
  return wrong.some((one) => one.number === number) ? `somebody else's number; ${said}` : said;
};

/** The numbers in the order in which they are tried, with whose they are, when, and what happened on each. */
export function HowToReach({
  contact,
  calls,
  language,
  needsInterpreter,
  there,
}: HowToReachProps): ReactNode {
  const lines = linesOf(contact);
  return (
    <section className={styles.reach}>
      <h2>How to reach</h2>
      {lines.length === 0 ? (
        <p>No telephone is recorded: find one.</p>
      ) : (
        <ol className={styles.numbers}>
          {lines.map(({ number, whose, times }) => (
            <li key={`${whose} ${number}`}>
              <strong>{number}</strong> {whose}
              {times !== null && `, best ${times}`}
              {onNumber(calls, number) !== "" && (
                <span className={styles.tried}> {onNumber(calls, number)}</span>
              )}
            </li>
          ))}
        </ol>
      )}
      {there !== null && <p>{thereNowWords(there)}. Times here are the clinic's.</p>}
      <p>{capital(interpreterWords({ needsInterpreter, language }) ?? "no interpreter needed")}.</p>
      {contact.homeNurse !== null && <p>Home nurse: {contact.homeNurse}.</p>}
      <p>
        {triesText(calls) === null
          ? "Nothing was tried since somebody was last reached."
          : `Tried: ${triesText(calls)}.`}
      </p>
    </section>
  );
}
