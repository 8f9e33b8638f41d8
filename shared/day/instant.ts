import { tzOffset } from "@date-fns/tz";
import { addDays, type Day } from "#shared/day/day.ts";
import { type Parsed, parsed, unread } from "#shared/errors/refusal.ts";

declare const instantBrand: unique symbol;
declare const zoneBrand: unique symbol;

/** A moment: whole milliseconds since 1970-01-01T00:00Z. The same everywhere; a zone makes a day and a clock time of it. */
export type Instant = number & { readonly [instantBrand]: "ms UTC" };

/** The name of a time zone in the IANA list, such as `America/Santiago`, or `UTC`. */
export type Zone = string & { readonly [zoneBrand]: "Zone" };

const MINUTE_MS = 60_000;
const DAY_MS = 86_400_000;
const FIRST_MS = Date.UTC(1900, 0, 1);
const LIMIT_MS = Date.UTC(2200, 0, 1);
const ZONE_SHAPE = /^(UTC|[A-Za-z_]+(\/[A-Za-z0-9_+-]+)+)$/;
const TIME_SHAPE = /^(\d{1,2})(?:[:.]?(\d{2}))?\s*(am|pm)?$/i;

/** True for whole milliseconds from 1900 to 2199, the years that a day may have. */
export const isInstant = (ms: number): ms is Instant =>
  Number.isInteger(ms) && ms >= FIRST_MS && ms < LIMIT_MS;

/** The instant, for milliseconds that come from a clock or a column. Throws RangeError on anything else. */
export function instant(ms: number): Instant {
  if (!isInstant(ms)) throw new RangeError(`not an instant: ${ms}`);
  return ms;
}

export const earliestOf = (...instants: readonly Instant[]): Instant => Math.min(...instants) as Instant;
export const latestOf = (...instants: readonly Instant[]): Instant => Math.max(...instants) as Instant;

/** Zones that were found once: to ask the machine takes a tenth of a millisecond, and each stored reading asks. */
const foundZones = new Set<string>();

/** True for a zone that this machine knows. */
export function isZone(text: string): text is Zone {
  if (foundZones.has(text)) return true;
  if (!ZONE_SHAPE.test(text)) return false;
  try {
    new Intl.DateTimeFormat("en-US", { timeZone: text });
    foundZones.add(text);
    return true;
  } catch {
    return false;
  }
}

/** The zone, for literals and settings. Throws RangeError on a zone that does not exist. */
export function zone(text: string): Zone {
  if (!isZone(text)) throw new RangeError(`not a time zone: ${text}`);
  return text;
}

/** What a clock on the wall shows, as if it were UTC. */
const wallMs = (at: number, where: Zone): number => at + tzOffset(where, new Date(at)) * MINUTE_MS;

const dayMs = (of: Day): number => Date.UTC(+of.slice(0, 4), +of.slice(5, 7) - 1, +of.slice(8, 10));

/**
 * The instants at which a wall clock shows `wall`: one, two when clocks go back, none when they go forward. Where the offset is
 * the same a day before and a day after, no clock changed in between.
 */
function instantsShowing(wall: number, where: Zone): readonly number[] {
  const [before, after] = [wall - DAY_MS, wall + DAY_MS].map((near) => wallMs(near, where) - near);
  if (before === undefined || after === undefined || before === after) return [wall - (before ?? 0)];
  return [wall - before, wall - after].filter((at) => wallMs(at, where) === wall).sort((a, b) => a - b);
}

/** The first instant at which the wall clock shows `wall` or more, where it never shows `wall` itself. */
function firstAfterGap(wall: number, where: Zone): number {
  let before = wall - DAY_MS;
  let after = wall + DAY_MS;
  while (after - before > 1) {
    const middle = Math.floor((before + after) / 2);
    if (wallMs(middle, where) < wall) before = middle;
    else after = middle;
  }
  return after;
}

/** The calendar day that a clock in that zone shows. `dayAt(2026-11-07T03:00Z, 'America/New_York')` is `2026-11-06`. */
export const dayAt = (at: Instant, where: Zone): Day =>
  new Date(wallMs(at, where)).toISOString().slice(0, 10) as Day;

/** `14:05`, the time that a clock in that zone shows. */
export const clockText = (at: Instant, where: Zone): string =>
  new Date(wallMs(at, where)).toISOString().slice(11, 16);

function findStart(of: Day, where: Zone): Instant {
  const midnight = dayMs(of);
  return (instantsShowing(midnight, where)[0] ?? firstAfterGap(midnight, where)) as Instant;
}

/** Days whose start was found once: every net day asks, of the same few hundred days. */
const foundStarts = new Map<Zone, Map<Day, Instant>>();

/**
 * The first instant of a day. Midnight, or where clocks jump over it (America/Santiago in September) the end of the jump.
 * A day that a zone left out altogether begins and ends at the same instant.
 */
export function startOfDay(of: Day, where: Zone): Instant {
  const found = foundStarts.get(where) ?? new Map<Day, Instant>();
  foundStarts.set(where, found);
  const start = found.get(of) ?? findStart(of, where);
  found.set(of, start);
  return start;
}

/** The first instant of the next day: a day is [start, end), 23 to 25 hours long. */
export const endOfDay = (of: Day, where: Zone): Instant => startOfDay(addDays(of, 1), where);

/** Minutes since midnight for `14:05`, `1405`, `9:30`, `2:05 pm`; undefined for anything else. */
function minutesOf(text: string): number | undefined {
  const match = TIME_SHAPE.exec(text.trim());
  if (match === null) return undefined;
  const [, hours = "", minutes, half] = match;
  if (half === undefined) {
    return minutes !== undefined && +hours < 24 && +minutes < 60 ? +hours * 60 + +minutes : undefined;
  }
  if (+hours < 1 || +hours > 12 || +(minutes ?? 0) > 59) return undefined;
  return ((+hours % 12) + (half.toLowerCase() === "pm" ? 12 : 0)) * 60 + +(minutes ?? 0);
}

/**
 * The instants of a time typed beside a day, the earlier first: two in an hour that comes twice, since clocks go back over it. An
 * hour that clocks skip is refused (`time-does-not-exist`).
 */
export function instantsAt(of: Day, text: string, where: Zone): Parsed<readonly [Instant, ...Instant[]]> {
  const minutes = minutesOf(text);
  if (minutes === undefined) return unread("time-not-understood", { text });
  const [first, ...more] = instantsShowing(dayMs(of) + minutes * MINUTE_MS, where).map(instant);
  if (first === undefined) return unread("time-does-not-exist", { text, day: of });
  return parsed([first, ...more]);
}

/** The same, of an hour that comes twice the earlier. */
export function instantAt(of: Day, text: string, where: Zone): Parsed<Instant> {
  const read = instantsAt(of, text, where);
  return read.ok ? parsed(read.value[0]) : read;
}

/** Which of the two it is, where a clock in that zone shows the same time twice; null where it does not. */
export function turnOf(at: Instant, where: Zone): "earlier" | "later" | null {
  const [first, second] = instantsShowing(wallMs(at, where), where);
  if (second === undefined) return null;
  return at === first ? "earlier" : "later";
}
