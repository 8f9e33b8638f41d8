import type { Day } from "#shared/day/day.ts";
import { printDay } from "#shared/day/print-day.ts";

const days = {
  earliestOn: "earliest",
  targetOn: "target",
  latestOn: "latest",
  escalatesOn: "a physician is asked from",
  physicianOn: "a physician's from",
} as const;
type DayName = keyof typeof days;
const dayNames = Object.keys(days) as readonly DayName[];

/** Days of a step by the names under which a proposal keeps them; one that is missing is not told. */
export type WindowInWords = Readonly<Partial<Record<DayName, Day | null>>>;

/** "earliest Fri 16 Oct 2026, target Fri 30 Oct 2026"; "no such step" of none. */
export function windowWords(window: WindowInWords | null): string {
  if (window === null) return "no such step";
  const told = dayNames.flatMap((name) => {
    const day = window[name];
    return day === null || day === undefined ? [] : [`${days[name]} ${printDay(day)}`];
  });
  return told.length === 0 ? "no day" : told.join(", ");
}

const ladder = ["escalatesOn", "physicianOn"] as const;
const ends = ["earliestOn", "targetOn", "latestOn"] as const;

type Moved = { readonly stood: WindowInWords | null; readonly proposed: WindowInWords | null };

/**
 * What moves beside the three days of a window: a step that comes up or goes; where the window stays, the days on which a physician is asked
 * and has it. Those follow a window that moves, and are not told again.
 */
export function besideWindow({ stood, proposed }: Moved): string {
  if (stood === null) return "a new step";
  if (proposed === null) return "this step would go";
  if (ends.some((end) => (stood[end] ?? null) !== (proposed[end] ?? null))) return "";
  return ladder
    .filter((name) => (stood[name] ?? null) !== (proposed[name] ?? null))
    .map((name) => {
      const [now, next] = [stood[name], proposed[name]].map((on) => (on ? printDay(on) : "no day"));
      return `${days[name]} ${next}, now ${now}`;
    })
    .join("; ");
}

/** "protocol 3, calendar 2" as a sentence names it: "version 3 of the protocol, version 2 of the calendar". */
export const causeWords = (cause: string): string =>
  cause
    .split(", ")
    .map((part) => {
      const [table = "", version = ""] = part.split(" ");
      return table === "rules" ? "newer rules of this program" : `version ${version} of the ${table}`;
    })
    .join(", ");

export const tubesWords = (tubes: number): string => `${tubes} ${tubes === 1 ? "tube" : "tubes"}`;

type Touched = { readonly tubes: number; readonly pastLatest: number };

/** `12 tubes get a new date proposed; 2 would be past latest today.` */
export function touchedWords({ tubes, pastLatest }: Touched): string {
  if (tubes === 0) return "No date that stands would be another.";
  const get = tubes === 1 ? "gets" : "get";
  return `${tubesWords(tubes)} ${get} a new date proposed; ${pastLatest === 0 ? "none" : pastLatest} would be past latest today.`;
}

/** What follows a change that was made. */
export const proposedWords = (tubes: number): string =>
  tubes === 0
    ? "No date that stands would be another by it."
    : `New dates are proposed for ${tubesWords(tubes)}; the old ones stand until somebody confirms.`;

/** Of what waits already, by earlier changes; nothing where nothing does. */
export function waitingWords(waiting: number): string {
  if (waiting === 0) return "";
  const dates = waiting === 1 ? "1 date waits" : `${waiting} dates wait`;
  return `${dates} to be confirmed already, by earlier changes: what of that would still move is counted here too, the rest is proposed no longer.`;
}
