import type { ReactNode } from "react";
import { mayRecord, tubeFormHref } from "#app/record/procedures.ts";
import type { TubePage } from "#app/tubes/tube-page.ts";
import { Now } from "#app/ui/now.tsx";
import type { Person } from "#shared/access/person.ts";
import { printWhen } from "#shared/day/print-day.ts";
import { numberedTitle } from "#shared/tube/name.ts";
import styles from "./tube.module.css";

type MayBeOutProps = { readonly view: TubePage; readonly person: Person };

/** One of several was told out and nobody knows which: this tube may be it, and its dates stand until that is found. */
export function MayBeOut({ view, person }: MayBeOutProps): ReactNode {
  const { tube, others } = view;
  return view.mayBeOut.map(({ eventId, toldBy, when, candidates }) => (
    <section key={eventId} className={styles.proposed}>
      <h2>
        <Now>It may be out</Now>
      </h2>
      <p>
        <bdi>{toldBy}</bdi> told that one was taken out
        {when.earliest !== null && ` (${printWhen(when)})`}, and not which: this one, or{" "}
        {others
          .filter(({ id }) => candidates.some((one) => one.tube === id))
          .map(numberedTitle)
          .join(", or ")}
        . Its dates stand until somebody finds out.
      </p>
      {mayRecord(person, "removed") && (
        <a href={tubeFormHref(tube.id, "removed")} data-screen-only>
          It was this one: record its removal
        </a>
      )}
    </section>
  ));
}
