import type { ReactNode } from "react";
import type { FlagPage } from "#app/flags/flag-pages.ts";
import { ExampleMark } from "#app/ui/example-mark.tsx";
import { Now } from "#app/ui/now.tsx";
import visitStyles from "#app/visit/visit.module.css";
import { printWhen } from "#shared/day/print-day.ts";
import type { WhenAt } from "#shared/day/read-when-at.ts";
import { capital } from "#shared/words/capital.ts";
import { numberByHand, onCallRoute } from "#shared/words/home-paper.ts";
import { bearsOnFlag, reachWords } from "#shared/words/red-flag-page.ts";

const at = ({ when, time }: WhenAt): string => `${printWhen(when)}${time === null ? "" : `, ${time}`}`;

/** What was told, how soon somebody is reached and how, what holds until then, and what is known that bears on it. */
export function FlagFacts({ view }: { readonly view: FlagPage }): ReactNode {
  const { flag, tubes, conditions, clinic } = view;
  return (
    <dl className={visitStyles.facts}>
      <dt>Told</dt>
      <dd>
        <bdi>{flag.says}</bdi>
        {flag.toldBy !== null && (
          <>
            , by <bdi>{flag.toldBy}</bdi>
          </>
        )}
        , {at(flag)}
        {flag.note !== null && (
          <>
            . <bdi>{flag.note}</bdi>
          </>
        )}
      </dd>
      <dt>How soon</dt>
      <dd>
        <Now>{reachWords[flag.level]}</Now>
      </dd>
      <dt>Until somebody is reached</dt>
      <dd>{flag.untilReached === null ? "no row says what to do" : <b>{flag.untilReached}</b>}</dd>
      <dt>Whom to ring</dt>
      <dd>
        <bdi>{clinic.phone === "" ? numberByHand : `${clinic.name}, ${clinic.phone}.`}</bdi> {onCallRoute}
      </dd>
      <dt>By which row</dt>
      <dd>
        <ByRow view={view} />
      </dd>
      <dt>Of</dt>
      <dd>{flag.of === null ? "the patient" : <Tube view={view} />}</dd>
      {tubes
        .filter(({ out }) => out !== null)
        .map(({ id, name, out }) => (
          <div key={id}>
            <dt>{name}</dt>
            <dd>
              <Now>{capital(out ?? "")}</Now>
            </dd>
          </div>
        ))}
      {bearsOnFlag(conditions).map(({ word, says }) => (
        <div key={word}>
          <dt>{capital(word)}</dt>
          <dd>{says}</dd>
        </div>
      ))}
      <Course view={view} />
    </dl>
  );
}

function Tube({ view: { flag, tubes } }: { readonly view: FlagPage }): ReactNode {
  const tube = tubes.find(({ id }) => id === flag.of?.tube);
  return tube === undefined ? `tube ${flag.of?.number}` : <a href={`/tubes/${tube.id}`}>{tube.name}</a>;
}

/** The words stand as they were told; what the newest table says of them now is said where it differs. */
function ByRow({ view: { flag, row } }: { readonly view: FlagPage }): ReactNode {
  if (row === null) return "none: in own words";
  const now = row.row;
  const same =
    now !== null &&
    now.level === flag.level &&
    now.says === flag.says &&
    now.untilReached === flag.untilReached;
  return (
    <>
      {row.id}; version {row.version} of the table{" "}
      {now === null
        ? "has no such row any more"
        : same
          ? `says the same (source ${now.source})`
          : `now says: ${now.level}: ${now.says}. Until somebody is reached: ${now.untilReached ?? "no row"} (source ${now.source})`}
      . {row.approved === null && <ExampleMark />}
    </>
  );
}

function Course({ view: { handed, done } }: { readonly view: FlagPage }): ReactNode {
  return (
    <>
      <dt>Handed to</dt>
      <dd>
        {handed.length === 0 && (done === null ? <Now>Nobody yet</Now> : "nobody")}
        {handed.map(({ eventId, to, note, ...when }) => (
          <p key={eventId}>
            <bdi>{to}</bdi>, {at(when)}
            {note !== null && (
              <>
                . <bdi>{note}</bdi>
              </>
            )}
          </p>
        ))}
      </dd>
      {done !== null && (
        <>
          <dt>What was done</dt>
          <dd>
            <bdi>{done.what}</bdi>, by <bdi>{done.by}</bdi>, {at(done)}
          </dd>
        </>
      )}
    </>
  );
}
