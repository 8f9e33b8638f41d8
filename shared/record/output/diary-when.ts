import { addDays, type Day } from "#shared/day/day.ts";
import { clockText, dayAt, endOfDay, type Instant, instantsAt, startOfDay } from "#shared/day/instant.ts";
import { printDay } from "#shared/day/print-day.ts";
import { readDay } from "#shared/day/read-day.ts";
import { type Moment, readInstant } from "#shared/day/read-when-at.ts";
import { type Parsed, parsed, unread } from "#shared/errors/refusal.ts";
import type { Stretch } from "#shared/record/output/reading-beside.ts";
import { SINCE_LAST } from "#shared/record/output/reading-form.ts";

/** Where a row of a diary is typed, and what the row before it speaks of; null in the first. */
export type DiaryMoment = Moment & { readonly before: Stretch | null };

const TIME_ALONE = /^(?:\d{1,2}(?:[:.]?\d{2})?(?:\s*[ap]m)?)$/i;
const DAYS_AFTER = /^\+(\d{1,2})$/;
const HOUR_ALONE = /^\d{1,2}$/;
/** A day and after it a time in figures alone: "14 nov 8", "14 nov 730"; what may be a year is one. */
const DAY_AND_FIGURES = /^(.*[^\d\s].*)\s(?!(?:19|20)\d{2}$)(\d{1,4})$/;

const withMinutes = (time: string): string => (HOUR_ALONE.test(time) ? `${time}:00` : time);

/** A time without a day: of the day of the row before, or of the next day where it would not lie after that row. */
function readTimeAlone(text: string, { now, zone, before: row }: DiaryMoment): Parsed<Instant> {
  const before = row?.to ?? null;
  const time = withMinutes(text);
  const first = dayAt(before ?? now, zone);
  const days: readonly Day[] = before === null ? [first] : [first, addDays(first, 1)];
  for (const day of days) {
    const showing = instantsAt(day, time, zone);
    if (!showing.ok) return showing;
    const at = showing.value.find((each) => before === null || each > before);
    if (at === undefined) continue;
    return at > now ? unread("time-in-future", { time: `${text} on ${printDay(day)}` }) : parsed(at);
  }
  return unread("time-not-understood", { text });
}

/** What was drained in the whole of a day that is over. */
function wholeDay(day: Day, { now, zone }: DiaryMoment): Parsed<Stretch> {
  const to = endOfDay(day, zone);
  if (to > now) return unread("time-in-future", { time: `The end of ${printDay(day)}` });
  return parsed({ from: startOfDay(day, zone), to });
}

/** "14 nov" alone. */
function readWholeDay(text: string, moment: DiaryMoment): Parsed<Stretch> {
  const read = readDay(text, { today: dayAt(moment.now, moment.zone), direction: "past" });
  return read.ok ? wholeDay(read.value, moment) : read;
}

/** The same time, or the whole of a day, so many days after the row before. */
function daysAfter(days: number, moment: DiaryMoment): Parsed<Stretch> {
  const { before, now, zone } = moment;
  if (before === null) return unread("day-missing");
  if (before.from !== SINCE_LAST) return wholeDay(addDays(dayAt(before.from, zone), days), moment);
  const day = addDays(dayAt(before.to, zone), days);
  const time = clockText(before.to, zone);
  const showing = instantsAt(day, time, zone);
  if (showing.ok && showing.value[0] > now)
    return unread("time-in-future", { time: `${time} on ${printDay(day)}` });
  return showing.ok ? until(parsed(showing.value[0])) : showing;
}

const until = (read: Parsed<Instant>): Parsed<Stretch> =>
  read.ok ? parsed({ from: SINCE_LAST, to: read.value }) : read;

/**
 * When a row of a diary was emptied: a day with a time ("14 nov 8:00", "14 nov 8"), a time alone ("14:00", "2200", "8"), which is of the
 * day of the row before or of the next, "+1" for the same a day after that row, or a day alone, which is all that came in it.
 *
 * Refusals: those of readInstant and readDay.
 */
export function readDiaryWhen(text: string, moment: DiaryMoment): Parsed<Stretch> {
  const typed = text.trim();
  const [, days] = DAYS_AFTER.exec(typed) ?? [];
  if (days !== undefined) return daysAfter(Number(days), moment);
  if (TIME_ALONE.test(typed)) return until(readTimeAlone(typed, moment));
  const read = readInstant(typed, moment);
  if (read.ok) return until(read);
  const [, date, time] = DAY_AND_FIGURES.exec(typed) ?? [];
  if (date !== undefined && time !== undefined) {
    const figures = time.length > 2 ? time.replace(/(\d{2})$/, ":$1") : withMinutes(time);
    return until(readInstant(`${date} ${figures}`, moment));
  }
  return read.refusal.code === "time-missing" ? readWholeDay(typed, moment) : read;
}
