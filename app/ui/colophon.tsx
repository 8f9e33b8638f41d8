import type { ReactNode } from "react";
import styles from "./colophon.module.css";

type ColophonProps = {
  readonly clinic: string;
  readonly books: readonly { readonly href: string; readonly word: string }[];
};

/** The foot of every page, on paper too: what the figures are and what they are not, whose pages these are, and the clinic's books. */
export function Colophon({ clinic, books }: ColophonProps): ReactNode {
  return (
    <footer className={styles.colophon}>
      <p>
        Figures are as entered; what is missing, late or unverified is said. Meeting a number means only that:
        check patency, patient and imaging.
      </p>
      <p>
        Not for emergencies: red flags go by the local on-call route. Breathlessness or chest pain with any
        tube, and a chest tube out or disconnected, go to emergency services.
      </p>
      <nav className={styles.books} aria-label="Clinic's books" data-screen-only>
        <bdi>{clinic}</bdi>
        {books.map(({ href, word }) => (
          <a key={href} href={href}>
            {word}
          </a>
        ))}
      </nav>
    </footer>
  );
}
