import { daysBetween } from "#shared/day/day.ts";
import {
  clockText,
  dayAt,
  type Instant,
  instant,
  instantAt,
  instantsAt,
  type Zone,
} from "#shared/day/instant.ts";
import { readWhen } from "#shared/day/read-day.ts";
import { onDay, type When } from "#shared/day/when.ts";
import { type Parsed, parsed, unread } from "#shared/errors/refusal.ts";

/** When something happened, with its clock time `HH:MM` at the clinic where that is known too. */
export type WhenAt = { readonly when: When; readonly time: string | null };

/** The moment at which somebody types, and the clinic's zone. */
export type Moment = { readonly now: Instant; readonly zone: Zone };

const NAMED_TIME = /^(.*?)[\s,]*(?:\bat\s+)?((?:^|\b)\d{1,2}:\d{2}(?:\s*[ap]m)?|(?:^|\b)\d{1,2}\s*[ap]m)$/is;

/** The words of the date, and those of a clock time after it. */
function parted(text: string): { readonly date: string; readonly time: string | undefined } {
  const [, date = text, time] = NAMED_TIME.exec(text.trim()) ?? [];
  return { date, time };
}

/**
 * A date that lies behind, with or without a clock time after it: `today`, `14 nov`, `in march`, `?`, `yesterday 23:50`, `2:05 pm`
 * (today), `now`. An exact day with "~" before it becomes a span of that one day, which counts as not exact.
 *
 * Refusals: those of readWhen, `time-not-understood`, `time-does-not-exist`, `time-in-future`; `day-not-exact` for a time beside a
 * date that is not one day.
 */
export function readWhenAt(text: string, { now, zone }: Moment): Parsed<WhenAt> {
  const today = dayAt(now, zone);
  if (text.trim().toLowerCase() === "now") {
    return parsed({ when: onDay(today), time: clockText(now, zone) });
  }
  const { date, time } = parted(text);
  const read = readWhen(date === "" && time !== undefined ? "today" : date, { today, direction: "past" });
  if (!read.ok) return read;
  const { when, certainty } = read.value;
  const about = certainty === "estimated" && when.precision === "day";
  if (time === undefined) return parsed({ when: about ? { ...when, precision: "span" } : when, time: null });
  if (when.precision !== "day" || about) return unread("day-not-exact", { text: date.trim() });
  const at = instantAt(when.earliest, time, zone);
  if (!at.ok) return at;
  const clock = clockText(at.value, zone);
  return at.value > now ? unread("time-in-future", { time: clock }) : parsed({ when, time: clock });
}

/**
 * The same words as a date that is soon to come, where they name no year: "30 nov", typed on 25 November, is taken as last year's and
 * may be a slip for another day of this month. Null where none comes within so many days.
 */
export function soonToCome(text: string, { now, zone }: Moment, withinDays: number): When | null {
  const today = dayAt(now, zone);
  const { date } = parted(text);
  const past = readWhen(date, { today, direction: "past" });
  const coming = readWhen(date, { today, direction: "future" });
  // A year, "yesterday" and "-3" read the same both ways; a month in progress begins on the same day.
  if (!past.ok || !coming.ok || past.value.when.earliest === coming.value.when.earliest) return null;
  const { when } = coming.value;
  return when.earliest !== null && daysBetween(today, when.earliest) <= withinDays ? when : null;
}

const toMinute = (at: Instant): Instant => instant(at - (at % 60_000));

const LATER = /[\s,]+(?:the )?later$/i;

/**
 * A moment that lies behind, to the minute. Of an hour that comes twice the earlier, or with "later" after it the other. A day without
 * a time is refused (`time-missing`).
 */
export function readInstant(text: string, moment: Moment): Parsed<Instant> {
  if (text.trim().toLowerCase() === "now") return parsed(toMinute(moment.now));
  const typed = text.trim().replace(LATER, "");
  const read = readWhenAt(typed, moment);
  if (!read.ok) return read;
  const { when, time } = read.value;
  if (when.precision !== "day") return unread("day-not-exact", { text: text.trim() });
  if (time === null) return unread("time-missing");
  const showing = instantsAt(when.earliest, time, moment.zone);
  if (!showing.ok) return showing;
  const at = typed === text.trim() ? showing.value[0] : (showing.value.at(-1) ?? showing.value[0]);
  return at > moment.now ? unread("time-in-future", { time }) : parsed(at);
}
