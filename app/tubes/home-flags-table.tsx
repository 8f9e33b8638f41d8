import type { ReactNode } from "react";
import type { HomeFlags } from "#shared/words/home-flags.ts";
import styles from "./diary-sheet.module.css";

/** What to call for, by how soon, and beside each what holds until then. */
export function HomeFlagsTable({ levels }: { readonly levels: readonly HomeFlags[] }): ReactNode {
  return (
    <table className={styles.flags}>
      {levels.map(({ head, flags }) => (
        <tbody key={head}>
          <tr>
            <th scope="col">{head}</th>
            <th scope="col">Until you reach someone</th>
          </tr>
          {flags.map(({ says, untilReached }) => (
            <tr key={says}>
              <td>
                <bdi>{says}</bdi>
              </td>
              <td>
                <bdi>{untilReached ?? ""}</bdi>
              </td>
            </tr>
          ))}
        </tbody>
      ))}
    </table>
  );
}
