import type { ReactNode } from "react";
import type { AskedFilter } from "#app/lists/list-line.ts";
import type { FilterName } from "#shared/record/list-filter.ts";
import { kindOf, tubeKinds } from "#shared/tube/kind/kinds.ts";
import { refusalSentence } from "#shared/words/refusals.ts";
import styles from "./filter-line.module.css";

type FilterLineProps = {
  /** The list's own address, without its filter. */
  readonly path: string;
  readonly asked: AskedFilter;
};

const PROBLEMS = "filter-problems";

/**
 * What a list shows, as one sentence to be filled in. A form that asks for the page again, by an address that can be kept and needs no
 * script. Folds away on a narrow page.
 */
export function FilterLine({ path, asked }: FilterLineProps): ReactNode {
  const { words, refusals } = asked;
  const isAsking = words !== null || refusals.length > 0;
  return (
    <search className={styles.filter} data-screen-only>
      <details className={styles.fold} open={refusals.length > 0}>
        <summary className={styles.summary}>
          {isAsking ? "Change what is shown" : "Show only some tubes"}
        </summary>
        <form className={styles.line} method="get" action={path}>
          <span className={styles.part}>
            <span className={styles.word}>Show</span> <KindField asked={asked} />
          </span>
          <Chooser name="side" word="on" label="Side" any="any side" asked={asked} />
          <Chooser name="role" word="with" label="Role of the tube" any="any role" asked={asked} />
          <Chooser name="owner" word="owned by" label="Owner" any="anyone" asked={asked} />
          <Chooser name="service" word="for" label="Responsible service" any="any service" asked={asked} />
          <Chooser name="visit" word="and" label="Visit" any="any visit or none" asked={asked} />
          <span className={styles.part}>
            <button className={styles.show} type="submit">
              Show
            </button>
            {isAsking && <a href={path}>Take the filter away</a>}
          </span>
        </form>
      </details>
      {refusals.length > 0 && (
        <div id={PROBLEMS} className={styles.problems}>
          {refusals.map((refusal) => (
            <p key={refusal.field}>{refusalSentence(refusal)}</p>
          ))}
          <p>Nothing is listed until this is mended.</p>
        </div>
      )}
    </search>
  );
}

const problemOf = ({ refusals }: AskedFilter, name: FilterName) =>
  refusals.some(({ field }) => field === name)
    ? { "aria-invalid": true, "aria-describedby": PROBLEMS }
    : undefined;

const KINDS = "kinds-of-tube";

/** Typed, with every short form that a recording form takes; the names are offered. */
function KindField({ asked }: { readonly asked: AskedFilter }): ReactNode {
  return (
    <>
      <input
        className={styles.kind}
        name="kind"
        type="text"
        aria-label="Kind of tube"
        placeholder="every kind"
        list={KINDS}
        autoComplete="off"
        spellCheck={false}
        defaultValue={asked.texts.kind}
        {...problemOf(asked, "kind")}
      />
      <datalist id={KINDS}>
        {tubeKinds.map((kind) => (
          <option key={kind} value={kindOf(kind).name} />
        ))}
      </datalist>
    </>
  );
}

type ChooserProps = {
  readonly name: Exclude<FilterName, "kind">;
  /** What leads to it in the sentence. */
  readonly word: string;
  readonly label: string;
  readonly any: string;
  readonly asked: AskedFilter;
};

/** One of a list of choices. A word of the address that is none of them stays in sight, to be mended. */
function Chooser({ name, word, label, any, asked }: ChooserProps): ReactNode {
  const choices = asked.choices[name];
  const chosen = asked.texts[name] ?? "";
  const isOffered = chosen === "" || choices.some(({ value }) => value === chosen);
  return (
    <span className={styles.part}>
      <span className={styles.word}>{word}</span>{" "}
      <select
        className={styles.choice}
        name={name}
        aria-label={label}
        defaultValue={chosen}
        {...problemOf(asked, name)}
      >
        <option value="">{any}</option>
        {!isOffered && <option value={chosen}>{chosen}</option>}
        {choices.map((choice) => (
          <option key={choice.value} value={choice.value}>
            {choice.label}
          </option>
        ))}
      </select>
    </span>
  );
}
