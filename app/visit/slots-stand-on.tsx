import type { ReactNode } from "react";
import { Now } from "#app/ui/now.tsx";
import type { SlotsPage } from "#app/visit/visit-pages.ts";
import { printDay } from "#shared/day/print-day.ts";
import type { Visit } from "#shared/visit/visit.ts";
import { capital } from "#shared/words/capital.ts";
import { slotPhrase, visitStateWords } from "#shared/words/visit-events.ts";
import { needLineWords, visitNeedsWords } from "#shared/words/visit-needs.ts";
import styles from "./visit.module.css";

const dayOr = (on: Parameters<typeof printDay>[0] | null, none: string): string =>
  on === null ? none : printDay(on);

/** The arithmetic behind the slots: the window, the minutes, the ages of the tubes, what became of the visits before. */
export function SlotsStandOn({ slots }: { readonly slots: SlotsPage }): ReactNode {
  const { window, tubes, needs, today, readyFrom, before, moves } = slots;
  const undated = tubes.filter((tube) => tube.undated);
  const nameOf = (tubeId: string): string =>
    tubes.find((tube) => tube.tubeId === tubeId)?.name ?? "another tube";
  return (
    <dl className={styles.facts}>
      <dt>Window</dt>
      <dd>
        {capital(dayOr(window.earliest, "no earliest date"))} to {dayOr(window.latest, "no latest date")},
        target {dayOr(window.target, "none: the sooner the better")}
        {window.latestOf !== null &&
          tubes.length > 1 &&
          `; the latest date is that of ${nameOf(window.latestOf)}`}
        {undated.length > 0 &&
          `; cannot tell for ${undated.map(({ name }) => name).join(", ")}: no open step gives it a date`}
        {window.early.length > 0 && `; before its own earliest date: ${window.early.map(nameOf).join(", ")}`}.
      </dd>
      <dt>Takes</dt>
      <dd>
        {needs.lines.map((line) => needLineWords(line, nameOf)).join("; ")}. Together {visitNeedsWords(needs)}
        .
      </dd>
      {readyFrom !== null && (
        <>
          <dt>Not before</dt>
          <dd>{printDay(readyFrom.on)}: what is to be settled first takes its time.</dd>
        </>
      )}
      {tubes.map(({ tubeId, name, inPlace, out, latest }) => (
        <div key={tubeId}>
          <dt>{name}</dt>
          <dd>
            {out === null ? `In place: ${inPlace}.` : <Now>{capital(out)}</Now>}
            {latest !== null && latest < today && <b> Past its latest date, {printDay(latest)}.</b>}
          </dd>
        </div>
      ))}
      {before.length > 0 && (
        <>
          <dt>Visits before</dt>
          <dd>
            {moves !== null &&
              moves.moved > 0 &&
              `Moved ${moves.moved} ${moves.moved === 1 ? "time" : "times"}. `}
            {before.map((visit) => (
              <BeforeLine key={visit.id} visit={visit} />
            ))}
          </dd>
        </>
      )}
    </dl>
  );
}

function BeforeLine({ visit }: { readonly visit: Visit }): ReactNode {
  return (
    <span className={styles.before}>
      {slotPhrase(visit)}: {visitStateWords[visit.state]}
      {visit.by !== null && ` by ${visit.by}`}
      {visit.reason !== null && `, ${visit.reason}`}.{" "}
    </span>
  );
}
