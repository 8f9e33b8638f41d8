import type { ReactNode } from "react";
import { type Choosing, choosingQuery } from "#app/visits/choosing.ts";
import type { DayAsked } from "#app/visits/day-asked.ts";
import { StopKeys } from "#app/visits/stop-keys.tsx";
import { addDays, type Day, weekdayOf } from "#shared/day/day.ts";
import { printDay } from "#shared/day/print-day.ts";
import styles from "./visits.module.css";

const DAY = "/visits";
const WEEK = "/visits/week";

export const mondayOf = (on: Day): Day => addDays(on, 1 - weekdayOf(on));

/** An address of these pages, which keeps for whom a time is looked for. */
export const dayHref = (on: Day, choosing: Choosing | null, path = DAY): string =>
  `${path}?${new URLSearchParams({ on, ...choosingQuery(choosing) })}`;

type NavProps = {
  readonly path: typeof DAY | typeof WEEK;
  readonly asked: DayAsked;
  readonly today: Day;
  readonly choosing: Choosing | null;
};

/** From day to day and from week to week, each way with its key, and to a day that is typed. */
export function DayNav({ path, asked, today, choosing }: NavProps): ReactNode {
  const { on } = asked;
  const isDay = path === DAY;
  const to = (away: number): string => dayHref(addDays(on, away), choosing, path);
  return (
    <div className={styles.nav} data-screen-only>
      <nav className={styles.ways} aria-label={isDay ? "Days" : "Weeks"}>
        <a id="week-before" href={to(-7)}>
          Week before {"{"}
        </a>
        {isDay && (
          <a id="day-before" href={to(-1)} rel="prev">
            Day before [
          </a>
        )}
        <a id="day-today" href={dayHref(today, choosing, path)}>
          {isDay ? "Today" : "This week"} .
        </a>
        {isDay && (
          <a id="day-after" href={to(1)} rel="next">
            Day after ]
          </a>
        )}
        <a id="week-after" href={to(7)}>
          Week after {"}"}
        </a>
        <a id="day-or-week" href={dayHref(on, choosing, isDay ? WEEK : DAY)}>
          {isDay ? "The whole week" : printDay(on)} =
        </a>
      </nav>
      <ToDay {...{ path, asked, choosing }} />
      <StopKeys />
    </div>
  );
}

/** A day as it is typed anywhere: "14 nov", "+3", "tomorrow". */
function ToDay({ path, asked, choosing }: Omit<NavProps, "today">): ReactNode {
  const { typed, problem } = asked;
  return (
    <form className={styles.toDay} action={path} aria-label="Another day">
      <label htmlFor="visits-on">To the day</label>
      <input
        id="visits-on"
        name="on"
        defaultValue={problem === null ? "" : typed}
        placeholder="14 nov, +3"
        autoComplete="off"
        aria-invalid={problem !== null || undefined}
        aria-describedby={problem === null ? undefined : "visits-on-problem"}
      />
      {Object.entries(choosingQuery(choosing)).map(([name, value]) => (
        <input key={name} type="hidden" name={name} value={value} />
      ))}
      <button type="submit">Go</button>
      {problem !== null && (
        <p id="visits-on-problem" role="alert" className={styles.problem}>
          {problem} Today stands below.
        </p>
      )}
    </form>
  );
}
