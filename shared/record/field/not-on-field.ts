import { type DayHalf, dayHalves } from "#shared/day/clinic-days.ts";
import { weekdayNames } from "#shared/day/print-day.ts";
import { readWeekdays } from "#shared/day/weekdays.ts";
import { type Parsed, parsed, unread } from "#shared/errors/refusal.ts";
import type { FieldWords } from "#shared/record/field/field-words.ts";
import type { FieldSpec } from "#shared/record/field-spec.ts";
import type { NotOn } from "#shared/visit/visit.ts";

const halves: Readonly<Record<string, DayHalf>> = {
  am: "morning",
  morning: "morning",
  mornings: "morning",
  pm: "afternoon",
  afternoon: "afternoon",
  afternoons: "afternoon",
};

const HALF_AT_END = new RegExp(`^(.*?)\\s+(${Object.keys(halves).join("|")})$`);

function readPart(part: string): Parsed<NotOn> {
  const [, before, word = ""] = HALF_AT_END.exec(part) ?? [];
  const days = readWeekdays(before ?? part);
  if (!days.ok) return unread("weekdays-not-understood", { text: part });
  return parsed(days.value.map((weekday) => ({ weekday, half: halves[word] ?? null })));
}

/** A whole day takes its halves with it; each once, in the order of the week. */
function inOrder(all: NotOn): NotOn {
  const halfOf = (half: DayHalf | null): number => (half === null ? -1 : dayHalves.indexOf(half));
  return all
    .toSorted((a, b) => a.weekday - b.weekday || halfOf(a.half) - halfOf(b.half))
    .filter(
      (one, n, sorted) =>
        sorted.findIndex((o) => o.weekday === one.weekday && (o.half === null || o.half === one.half)) === n,
    );
}

/** Weekdays, and halves of them, on which somebody cannot come: "mon wed, fri pm". Blank or "none": there are none. */
export function readNotOn(text: string): Parsed<NotOn> {
  const typed = text.trim().toLowerCase();
  if (typed === "" || typed === "none") return parsed([]);
  const all: NotOn[number][] = [];
  for (const part of typed.split(/\s*[,;]\s*/).filter((one) => one !== "")) {
    const read = readPart(part);
    if (!read.ok) return read;
    all.push(...read.value);
  }
  return parsed(inOrder(all));
}

/** "Monday, Friday afternoons". What it prints is read back. */
export const printNotOn = (notOn: NotOn): string =>
  notOn
    .map(({ weekday, half }) => `${weekdayNames[weekday - 1] ?? ""}${half === null ? "" : ` ${half}s`}`)
    .join(", ");

/** Days on which the patient cannot come. */
export const notOnField = (words: FieldWords): FieldSpec<NotOn> => ({
  hint: "mon wed fri, tue pm: dialysis, chemotherapy, work",
  ...words,
  read: readNotOn,
  echo: printNotOn,
});
