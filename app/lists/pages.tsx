import type { ReactNode } from "react";
import styles from "./pages.module.css";

type PagesProps = {
  /** Counted from 1. */
  readonly page: number;
  readonly hasNext: boolean;
  readonly hrefOf: (page: number) => string;
  /** What is paged, where a page holds more than one list. */
  readonly of?: string;
};

/** The way to the rows before and after; nothing where all of them stand here. */
export function Pages({ page, hasNext, hrefOf, of = "the list" }: PagesProps): ReactNode {
  if (page === 1 && !hasNext) return null;
  return (
    <nav className={styles.pages} aria-label={`Pages of ${of}`} data-screen-only>
      {page > 1 && (
        <a href={hrefOf(page - 1)} rel="prev">
          The rows before these
        </a>
      )}
      {hasNext && (
        <a href={hrefOf(page + 1)} rel="next">
          The rows after these
        </a>
      )}
    </nav>
  );
}
