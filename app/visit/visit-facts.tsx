import type { ReactNode } from "react";
import { Now } from "#app/ui/now.tsx";
import type { VisitPage } from "#app/visit/visit-pages.ts";
import { capital } from "#shared/words/capital.ts";
import { catheterWords } from "#shared/words/clocks.ts";
import { refusalSentence } from "#shared/words/refusals.ts";
import { stepStanding } from "#shared/words/steps.ts";
import { slotPhrase, visitStateWords } from "#shared/words/visit-events.ts";
import styles from "./visit.module.css";

/** When, where, how it stands, what stands against it; each tube with its age and what its own date says. */
export function VisitFacts({ view }: { readonly view: VisitPage }): ReactNode {
  const { visit, room, tubes, against, steps, today } = view;
  return (
    <dl className={styles.facts}>
      <dt>When and where</dt>
      <dd>
        {slotPhrase(visit)}
        {room !== null && `, ${room}`}
        {visit.urgent && (
          <>
            {" "}
            <Now>urgent</Now>
          </>
        )}
      </dd>
      <dt>How it stands</dt>
      <dd>
        {capital(visitStateWords[visit.state])}
        {visit.by !== null && ` by ${visit.by}`}
        {visit.reason !== null && `, ${visit.reason}`}.
        {visit.moved > 0 && ` Moved ${visit.moved} ${visit.moved === 1 ? "time" : "times"}.`}
      </dd>
      {against.length > 0 && (
        <>
          <dt>It could not be booked there now</dt>
          <dd>
            {against.map((refusal) => (
              <Now key={refusal.code}>{refusalSentence(refusal)} </Now>
            ))}
          </dd>
        </>
      )}
      {tubes.map(({ tube, name, act, open, catheterAge }) => (
        <div key={tube.id}>
          <dt>
            <a href={`/tubes/${tube.id}`}>{name}</a>: {act}
          </dt>
          <dd>
            {open ? `In place ${catheterWords(catheterAge, tube.catheter)}. ` : "On record. "}
            {steps
              .filter(({ tubeId, kind }) => tubeId === tube.id && kind === "exchange")
              .map((step) => capital(`${stepStanding(step, today)}.`))
              .join(" ")}
          </dd>
        </div>
      ))}
      {visit.note !== null && (
        <>
          <dt>Note</dt>
          <dd>
            <bdi>{visit.note}</bdi>
          </dd>
        </>
      )}
    </dl>
  );
}
