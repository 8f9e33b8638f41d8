import type { ReactNode } from "react";
import type { TodayPage } from "#app/lists/list-line.ts";
import { partWords } from "#app/today/part-words.ts";
import { dayParts } from "#shared/step/day-part.ts";
import styles from "./today.module.css";

/** How much stands in each part that holds anything, so that none is hidden beneath a long one above it. Each leads to its part. */
export function PartsLine({ parts }: Pick<TodayPage, "parts">): ReactNode {
  const held = dayParts.filter((part) => parts[part].total > 0);
  if (held.length < 2) return null;
  return (
    <nav aria-label="Parts of today" data-screen-only>
      <ul className={styles.line}>
        {held.map((part) => (
          <li key={part}>
            <a href={`#${part}`}>{partWords[part].head}</a> {parts[part].total}
          </li>
        ))}
      </ul>
    </nav>
  );
}
