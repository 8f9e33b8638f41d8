import type { Metadata } from "next";
import type { ReactNode } from "react";
import { signedIn } from "#app/_trpc/server.ts";
import { PageFrame } from "#app/ui/page-frame.tsx";
import styles from "./books.module.css";

export const metadata: Metadata = { title: "Clinic's books - Dwellbook" };

/** What is opened now and then and not daily, with what is in each. */
export default async function BooksPage(): Promise<ReactNode> {
  const { frame } = await signedIn();
  return (
    <PageFrame frame={frame} heading="Which of the clinic's books?" lede={frame.clinic} here="Clinic's books">
      <ul className={styles.books}>
        {frame.books.map(({ href, word, says }) => (
          <li key={href} className={styles.book}>
            <a href={href}>{word}</a>
            <span>{says}</span>
          </li>
        ))}
      </ul>
    </PageFrame>
  );
}
