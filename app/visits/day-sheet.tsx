import type { ReactNode } from "react";
import type { SignedIn } from "#app/_trpc/server.ts";
import { fullNameOf, identityOf } from "#app/patients/identity-of.ts";
import { exchangePlanOf } from "#shared/tube/exchange-planned.ts";
import { titlesOf, tubeDetail } from "#shared/tube/name.ts";
import { beforeLines } from "#shared/words/day-sheet.ts";
import { bleedingLine } from "#shared/words/exchange-plan.ts";
import { printMinute } from "#shared/words/offers.ts";
import { refusalSentence } from "#shared/words/refusals.ts";
import { plannedLines } from "#shared/words/table-top.ts";
import { halfDayWords, roomDayWords, spanWords, visitStands, visitTime } from "#shared/words/visit-day.ts";
import styles from "./day-sheet.module.css";

type Sheet = Awaited<ReturnType<SignedIn["api"]["visit"]["sheet"]>>;
type Line = Sheet["others"][number];

/** Empty rows under a room that keeps time for what is urgent. */
const urgentRows = ["first", "second"] as const;

const heads = ["Time", "Patient", "Tube and act", "On the table", "Before it", "Notes"] as const;

/** A sheet a room, then what is elsewhere, then both bleeding classes for discussion. */
export function DaySheet({ sheet }: { readonly sheet: Sheet }): ReactNode {
  const { rooms, others, shut, half, bleeding, on, today } = sheet;
  const used = rooms.filter(({ spans, visits }) => spans.length > 0 || visits.length > 0);
  // A room in which nobody comes and nothing is kept free has nothing to be written on.
  const sheets = used.filter(({ room, visits }) => visits.length > 0 || (shut === null && room.reserve > 0));
  return (
    <>
      {shut !== null && <p>The clinic is closed: {shut}.</p>}
      {half !== null && <p>{halfDayWords(half)}</p>}
      {sheets.map((of) => (
        <section key={of.room.id} className={styles.sheet}>
          <h2>
            {of.room.name} <span className={styles.soft}>{roomDayWords(of, on < today)}</span>
          </h2>
          <SheetTable caption={of.room.name} lines={of.visits} urgent={of.room.reserve > 0} />
          {of.free.length > 0 && <p>Free: {of.free.map(spanWords).join(", ")}.</p>}
        </section>
      ))}
      {used
        .filter((of) => !sheets.includes(of))
        .map((of) => (
          <p key={of.room.id} className={styles.foot}>
            {of.room.name}: {roomDayWords(of, on < today)}.
          </p>
        ))}
      {others.length > 0 && (
        <section className={styles.sheet}>
          <h2>Elsewhere</h2>
          <SheetTable caption="Elsewhere" lines={others} urgent={false} />
        </section>
      )}
      {used.length === 0 && others.length === 0 && <p className={styles.foot}>Nobody comes on this day.</p>}
      {bleeding !== null && bleeding.rows.length > 0 && (
        <section className={styles.foot}>
          <h2>Bleeding risk, both classes, for discussion</h2>
          <p>Nothing on this sheet judges them, and no hold is computed.</p>
          {bleeding.rows.map((row) => (
            <p key={row.class}>{bleedingLine(row)}</p>
          ))}
        </section>
      )}
    </>
  );
}

type TableProps = { readonly caption: string; readonly lines: readonly Line[]; readonly urgent: boolean };

function SheetTable({ caption, lines, urgent }: TableProps): ReactNode {
  return (
    <table className={styles.table}>
      <caption className={styles.caption}>{caption}: visits in order of time</caption>
      <thead>
        <tr>
          {heads.map((head) => (
            <th key={head} scope="col">
              {head}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {lines.map((line) => (
          <SheetRow key={line.visit.id} line={line} />
        ))}
        {urgent &&
          urgentRows.map((row) => (
            <tr key={row}>
              <th scope="row">Urgent, kept free</th>
              {heads.slice(1).map((head) => (
                <td key={head} data-head={head} />
              ))}
            </tr>
          ))}
      </tbody>
    </table>
  );
}

function SheetRow({ line }: { readonly line: Line }): ReactNode {
  const { visit, patient, against, open, known } = line;
  const { place } = visit;
  const titles = titlesOf(line.all);
  return (
    <tr>
      <th scope="row">
        <span className={styles.time}>{place.from === null ? "?" : printMinute(place.from)}</span>
        {place.kind === "here" && (
          <span className={styles.line}>to {printMinute(place.from + place.minutes)}</span>
        )}
        {place.from === null && <span className={styles.line}>{visitTime(place)}</span>}
        {place.kind === "elsewhere" && <bdi className={styles.line}>{place.where}</bdi>}
        <span className={styles.line}>
          {visitStands(visit)}
          {visit.urgent && <strong>, urgent</strong>}
        </span>
        {against.length > 0 && (
          <strong className={styles.line}>
            Could not be booked here now: {against.map(refusalSentence).join(" ")}
          </strong>
        )}
      </th>
      <td data-head="Patient">
        <bdi className={styles.strong}>{fullNameOf(patient)}</bdi>
        {identityOf(patient, null).identifiers.map(({ word, value }) => (
          <span key={word} className={styles.line}>
            {word} <bdi>{value}</bdi>
          </span>
        ))}
      </td>
      <td data-head="Tube and act">
        {line.tubes.map(({ tubeId, tube, act }) => (
          <p key={tubeId}>
            <strong>{tube === null ? "A tube that is no longer on record" : titles.get(tubeId)}</strong>
            {tube !== null && `, ${tubeDetail(tube)}`}: {act}
          </p>
        ))}
        {visit.note !== null && <bdi>{visit.note}</bdi>}
      </td>
      <td data-head="On the table">
        {line.tubes.map((one) => (
          <OnTheTable key={one.tubeId} {...one} />
        ))}
      </td>
      <td data-head="Before it">
        {beforeLines({ open, known, prepared: visit.prepared }).map((said) => (
          <p key={said}>
            <bdi>{said}</bdi>
          </p>
        ))}
      </td>
      <td data-head="Notes" />
    </tr>
  );
}

/** The planned things in short; all of it stands on the table-top list of the tube. */
function OnTheTable({ tubeId, tube, act }: Line["tubes"][number]): ReactNode {
  if (act !== "exchange" || tube === null) return null;
  const planned = tube.plannedExchange;
  if (planned === null) return <p>No exchange is planned with its things.</p>;
  return (
    <>
      {plannedLines(exchangePlanOf(planned)).map((said) => (
        <p key={said}>
          <bdi>{said}</bdi>
        </p>
      ))}
      <p>
        <a href={`/tubes/${tubeId}/table-top`}>All of it: the table-top list</a>
      </p>
    </>
  );
}
