import type { Minute } from "#shared/visit/room.ts";

const DAY_END: Minute = 1440;

/** `8`, `8:30`, `8.30`, `8h30`, `0830`, `4 pm`; `24` and `24:00` are the end of the day. */
const TIME_SHAPE = /^(\d{1,2})(?:[:.h]?(\d{2}))? ?(am|pm)?$/;

/** A time of day in small letters as a minute of the day; null where it is none. */
export function readMinute(text: string): Minute | null {
  const [, hour = "", minute = "0", half] = TIME_SHAPE.exec(text) ?? [];
  if (hour === "" || Number(minute) > 59) return null;
  const past = Number(hour) * 60 + Number(minute);
  if (half === undefined) return past > DAY_END ? null : past;
  if (Number(hour) < 1 || Number(hour) > 12) return null;
  return ((Number(hour) % 12) + (half === "pm" ? 12 : 0)) * 60 + Number(minute);
}
