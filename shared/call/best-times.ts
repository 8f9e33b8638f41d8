import type { CallRows, DayPart } from "#shared/protocol/call-rows.ts";
import { readMinute } from "#shared/visit/read-minute.ts";

/** Minutes of the patient's day, from one and up to another. */
export type Span = { readonly from: number; readonly to: number };
type Hours = CallRows["hours"];

const HOUR = 60;
const DAY_END = 24 * HOUR;
/** An hour of seven or less without am or pm may be either. */
const FIRST_CLEAR_HOUR = 8;

const parts: Readonly<Record<string, DayPart>> = {
  morning: "morning",
  mornings: "morning",
  afternoon: "afternoon",
  afternoons: "afternoon",
  evening: "evening",
  evenings: "evening",
};

const named: Readonly<Record<string, number>> = { noon: 12 * HOUR, midday: 12 * HOUR };

/** A time that can be read one way only; null where it cannot. */
function clearTime(text: string): number | null {
  const typed = text.trim();
  const minute = named[typed] ?? readMinute(typed);
  const isBare = /^\d{1,2}$/.test(typed) && Number(typed) < FIRST_CLEAR_HOUR;
  return isBare ? null : minute;
}

function span(from: number | null, to: number | null): Span | null {
  return from === null || to === null || from >= to ? null : { from, to };
}

/** "4-6 pm": what stands behind the second stands for both. */
function between(first: string, second: string): Span | null {
  const half = /(am|pm)$/.exec(second)?.[1] ?? "";
  const isBare = /^\d{1,2}(?:[:.]\d{2})?$/.test(first.trim());
  const to = clearTime(second);
  return (
    span(clearTime(isBare && half !== "" ? `${first.trim()} ${half}` : first), to) ??
    span(clearTime(first), to)
  );
}

function readOne(text: string, hours: Hours): Span | null {
  const part = parts[text];
  if (part !== undefined) {
    const row = hours.find((one) => one.part === part);
    return row === undefined ? null : span(row.from * HOUR, row.to * HOUR);
  }
  const [, word = "", time = ""] = /^(after|from|not before|before|until|till)\s+(.+)$/.exec(text) ?? [];
  if (word === "after" || word === "from" || word === "not before") return span(clearTime(time), DAY_END);
  if (word !== "") return span(0, clearTime(time));
  const [, first, second] = /^(.+?)\s*(?:-|–|to)\s*(.+)$/.exec(text) ?? [];
  return first === undefined || second === undefined ? null : between(first, second);
}

const FILLING = /\b(?:best|only|in the|every|ring|call|please)\b/g;

/**
 * Best times as people type them, by the patient's clock: "after 5 pm", "mornings or 18:00-20:00", "between 9 and 11". Parts of a day are those of the
 * clinic's rows. Null where a part of it is not understood, or can be read two ways ("after 5"): such a text is shown, and orders nothing.
 */
export function readBestTimes(text: string, hours: Hours): readonly Span[] | null {
  const typed = text
    .toLowerCase()
    .replace(/\bbetween\s+(\S+(?:\s?(?:am|pm))?)\s+and\s+/g, "$1-")
    .replace(FILLING, " ")
    .replace(/[().]+$|^[(]/g, "")
    .replace(/\s+/g, " ");
  const spans: Span[] = [];
  for (const one of typed.split(/\s*(?:,|;|\/|\bor\b|\band\b)\s*/)) {
    if (one.trim() === "") continue;
    const read = readOne(one.trim(), hours);
    if (read === null) return null;
    spans.push(read);
  }
  return spans.length === 0 ? null : spans;
}

/** Of several numbers every span that is understood, in order. */
export const bestSpans = (texts: readonly string[], hours: Hours): readonly Span[] =>
  texts
    .flatMap((text) => readBestTimes(text, hours) ?? [])
    .toSorted((a, b) => a.from - b.from || a.to - b.to);
