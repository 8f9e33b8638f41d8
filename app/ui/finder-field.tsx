import type { ReactNode } from "react";
import { FINDER_ID } from "#app/ui/finder-id.ts";
import { LONGEST_TYPED } from "#shared/record/finder.ts";
import styles from "./finder-field.module.css";

/** Finds a patient from any page. A form that is posted: what is typed goes into no address, and it needs no script. */
export function FinderField(): ReactNode {
  return (
    <search data-screen-only>
      <form className={styles.form} method="post" action="/api/find">
        <label className={styles.unseen} htmlFor={FINDER_ID}>
          Find a patient by name, number, birth date or telephone
        </label>
        <input
          id={FINDER_ID}
          className={styles.field}
          name="typed"
          type="text"
          placeholder="Name, number"
          maxLength={LONGEST_TYPED}
          autoComplete="off"
          spellCheck={false}
          required
        />
        <button className={styles.find} type="submit">
          Find
        </button>
      </form>
    </search>
  );
}
