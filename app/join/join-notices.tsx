import type { ReactNode } from "react";
import { numbersText } from "#app/join/other-record.tsx";
import { fullNameOf } from "#app/patients/identity-of.ts";
import type { PatientPage } from "#app/patients/patient-page.ts";
import { Now } from "#app/ui/now.tsx";

type Joined = PatientPage["joined"];

/** On the page of a record that goes on in another: where its tubes stand. */
export function JoinedInto({ into }: { readonly into: NonNullable<Joined["into"]> }): ReactNode {
  return (
    <p role="status">
      <Now>This record was joined with another of the same person.</Now> Its tubes and its story stand there,
      and it takes no more entries:{" "}
      <a href={`/patients/${into.id}`}>
        <bdi>
          {fullNameOf(into)}, {numbersText(into)}
        </bdi>
      </a>
    </p>
  );
}

/** On the page of the record that stays: under which numbers this person was recorded too. */
export function AlsoRecordedAs({ from }: Pick<Joined, "from">): ReactNode {
  if (from.length === 0) return null;
  return (
    <p>
      Also recorded as:{" "}
      {from.map((other, index) => (
        <span key={other.id}>
          {index > 0 && "; "}
          <a href={`/patients/${other.id}`}>
            <bdi>
              {fullNameOf(other)}, {numbersText(other)}
            </bdi>
          </a>
        </span>
      ))}
    </p>
  );
}
