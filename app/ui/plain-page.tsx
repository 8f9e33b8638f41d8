import type { ReactNode } from "react";
import { BookName } from "#app/ui/book-name.tsx";
import styles from "./plain-page.module.css";

type PlainPageProps = {
  readonly heading: string;
  /** Whose book it is, where that is known. */
  readonly clinic?: string | null;
  readonly children: ReactNode;
};

/** A page outside the book: before sign-in, and where something is not there. */
export function PlainPage({ heading, clinic = null, children }: PlainPageProps): ReactNode {
  return (
    <main className={styles.sheet}>
      <p className={styles.book}>
        <BookName />
        {clinic !== null && <bdi className={styles.clinic}>{clinic}</bdi>}
      </p>
      <h1 className={styles.heading}>{heading}</h1>
      <div className={styles.content}>{children}</div>
    </main>
  );
}
