import type { ReactNode } from "react";
import { mayRecord, type PatientForm, type TubeForm } from "#app/record/procedures.ts";
import type { Person } from "#shared/access/person.ts";
import { actLabels } from "#shared/words/acts.ts";
import styles from "./act-links.module.css";

type ActLinksProps<F extends TubeForm | PatientForm> = {
  readonly forms: readonly F[];
  readonly hrefOf: (form: F) => string;
  readonly person: Person;
  /** For those who hear it: "What to record of this tube". */
  readonly label: string;
};

/** What this person may record here, the likeliest first. */
export function ActLinks<F extends TubeForm | PatientForm>(props: ActLinksProps<F>): ReactNode {
  const { forms, hrefOf, person, label } = props;
  const allowed = forms.filter((form) => mayRecord(person, form));
  if (allowed.length === 0) return null;
  return (
    <LinkLine label={label} links={allowed.map((form) => ({ href: hrefOf(form), word: actLabels[form] }))} />
  );
}

type LinkLineProps = {
  readonly label: string;
  readonly links: readonly { readonly href: string; readonly word: string }[];
};

/** What may be done here, each a link, in one line. */
export function LinkLine({ label, links }: LinkLineProps): ReactNode {
  return (
    <nav className={styles.acts} aria-label={label} data-screen-only>
      {links.map(({ href, word }) => (
        <a key={href} href={href}>
          {word}
        </a>
      ))}
    </nav>
  );
}

type ActButtonProps = { readonly href: string; readonly children: ReactNode };

/** The one act that what stands above it needs. */
export function ActButton({ href, children }: ActButtonProps): ReactNode {
  return (
    <a className={styles.button} href={href} data-screen-only>
      {children}
    </a>
  );
}
