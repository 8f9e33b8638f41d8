import type { ReactNode } from "react";
import type { SignedIn } from "#app/_trpc/server.ts";
import { OtherRecord } from "#app/join/other-record.tsx";
import styles from "#app/patients/patient.module.css";
import { may } from "#shared/access/may.ts";
import type { Person } from "#shared/access/person.ts";
import type { PatientTubes } from "#shared/tube/state.ts";

export type Meant = Awaited<ReturnType<SignedIn["api"]["patient"]["recordsMeant"]>>;

type Asking = {
  readonly api: SignedIn["api"];
  readonly person: Person;
  readonly patientId: string;
  readonly state: Pick<PatientTubes, "reconciles">;
};

/** Which other records are meant; null where two records are not asked about, or who looks may not join them. */
export async function recordsMeant({ api, person, patientId, state }: Asking): Promise<Meant | null> {
  const asked = state.reconciles.some(({ about }) => about === "two records of one patient");
  return asked && may(person, "record.joined") ? api.patient.recordsMeant({ patientId }) : null;
}

type RecordsMeantProps = { readonly meant: Meant; readonly patientId: string };

/** The other record by name, birth date and numbers, each leading to both side by side, where they are joined. */
export function RecordsMeant({ meant, patientId }: RecordsMeantProps): ReactNode {
  return (
    <>
      <p>
        {meant.length === 0
          ? "No other record here has the same name, the same birth date or a number that is named above."
          : "Perhaps meant, by a number named above, by name or by birth date. Open both side by side and join them there, if both are one person's:"}
      </p>
      {meant.length > 0 && (
        <ul className={styles.answers}>
          {meant.map((record) => (
            <OtherRecord key={record.id} {...{ record, patientId }} />
          ))}
        </ul>
      )}
      <p data-screen-only>
        <a href={`/patients/${patientId}/join`}>
          {meant.length === 0 ? "Find the other record by its number" : "Find another by its number"}
        </a>
      </p>
    </>
  );
}
