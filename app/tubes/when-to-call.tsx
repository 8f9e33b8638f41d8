import type { ReactNode } from "react";
import { ClinicNumber } from "#app/tubes/clinic-number.tsx";
import { HomeFlagsTable } from "#app/tubes/home-flags-table.tsx";
import { HomeIdentity } from "#app/tubes/home-identity.tsx";
import type { TubePage } from "#app/tubes/tube-page.ts";
import { ExampleMark } from "#app/ui/example-mark.tsx";
import type { homeFlags } from "#shared/words/home-flags.ts";
import { emergencyCaution, onCallRoute } from "#shared/words/home-paper.ts";
import styles from "./diary-sheet.module.css";
import paper from "./home-paper.module.css";

type WhenToCallProps = {
  readonly patient: Parameters<typeof HomeIdentity>[0]["patient"];
  readonly takeHome: Pick<TubePage["takeHome"], "approved" | "clinic">;
  /** What is to be known of the list, such as that nobody has approved it. */
  readonly notes: readonly string[];
  readonly levels: ReturnType<typeof homeFlags>;
  readonly cautions: readonly string[];
};

/** When to call whom, by the clinic's list, and what holds until somebody is reached: the same on every paper that goes home. */
export function WhenToCall({ patient, takeHome, notes, levels, cautions }: WhenToCallProps): ReactNode {
  return (
    <section className={styles.help}>
      <h2 className={styles.title}>When to call, and whom</h2>
      <HomeIdentity patient={patient} />
      <ClinicNumber clinic={takeHome.clinic} />
      <p>
        {onCallRoute} <span className={paper.blank} />
      </p>
      <p>
        {emergencyCaution} {takeHome.approved === null && <ExampleMark />} {notes.join(" ")}
      </p>
      {levels.length > 0 && <HomeFlagsTable levels={levels} />}
      <div className={styles.cautions}>
        {cautions.map((line) => (
          <p key={line}>{line}</p>
        ))}
      </div>
    </section>
  );
}
