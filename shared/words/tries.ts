import type { CallLog, Tried } from "#shared/call/call-log.ts";
import { printWhen } from "#shared/day/print-day.ts";

const whenOf = ({ when, time }: Pick<Tried, "when" | "time">): string =>
  [printWhen(when), time].filter((part) => part !== null).join(", ");

/** "voicemail, Mon 17 Aug 2026, 10:00, on 555 0117"; of a letter to whom it went. */
export function triedText(tried: Tried): string {
  if (tried.by === "letter") return `letter to ${tried.to}, ${whenOf(tried)}`;
  const { to, outcome, number } = tried;
  const whom = to === "the patient" ? "" : `${to}: `;
  return `${whom}${outcome}, ${whenOf(tried)}${number === null ? "" : `, on ${number}`}`;
}

/** The story of a ladder in one line, the first try first; null where nothing was tried since somebody was last reached. */
export const triesText = ({ tries }: Pick<CallLog, "tries">): string | null =>
  tries.length === 0 ? null : tries.map(triedText).join("; ");
