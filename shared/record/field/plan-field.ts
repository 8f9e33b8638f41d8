import { readDay } from "#shared/day/read-day.ts";
import { type Parsed, parsed, unread } from "#shared/errors/refusal.ts";
import type { FieldWords } from "#shared/record/field/field-words.ts";
import { passedDay } from "#shared/record/field/passed-day.ts";
import type { FieldSpec } from "#shared/record/field-spec.ts";
import type { FormContext } from "#shared/record/form.ts";
import { LINE_LIMIT } from "#shared/tube/entry-limits.ts";
import type { OperatorPlan } from "#shared/tube/payloads.ts";
import { printPlan } from "#shared/words/plan.ts";

type Act = OperatorPlan["act"];

export const PLAN_EXAMPLES = "exchange by 30 oct Dr Example, remove by +90, review 14 nov because ...";
const PLAN_HINT = `${PLAN_EXAMPLES}; blank: the protocol's row`;

const BY_ROW = /^(?:as )?(?:the )?(?:protocol|row)\.?$/i;
const PLAN = /^(exchange|ex|change|remove|removal|rm|review|rv)\s+(?:by |on |before )?\s*(.+)$/is;
const BECAUSE = /^(.*?)[\s,;]*\bbecause\s+(.+)$/is;
/** "the 14th of" is not read, so a date has at most weekday, day, month and year. */
const MOST_DATE_WORDS = 4;

const actOf = (word: string): Act => {
  const letters = word.toLowerCase();
  if (letters.startsWith("rev") || letters === "rv") return "review";
  return letters.startsWith("r") ? "remove" : "exchange";
};

/** The longest beginning that reads as one day; what follows it names who does it. Without one, the most telling refusal. */
function readByWhom(text: string, { today }: FormContext): Parsed<Pick<OperatorPlan, "by" | "byWhom">> {
  const tokens = text.trim().split(/\s+/);
  const refused: Parsed<never>[] = [];
  for (let count = Math.min(MOST_DATE_WORDS, tokens.length); count > 0; count -= 1) {
    const day = readDay(tokens.slice(0, count).join(" "), { today, direction: "future" });
    const byWhom = tokens.slice(count).join(" ").replace(/^by /, "");
    if (day.ok) return parsed({ by: day.value, byWhom: byWhom === "" ? null : byWhom });
    refused.push(day);
  }
  const telling = refused.find((day) => !day.ok && day.refusal.code !== "day-not-understood");
  return telling ?? unread("plan-not-understood", { text });
}

/** The operator's plan as it is dictated, or null where the protocol's row applies: a blank, "as protocol". */
export function readPlan(text: string, context: FormContext): Parsed<OperatorPlan | null> {
  const typed = text.trim();
  if (typed === "" || BY_ROW.test(typed)) return parsed(null);
  if (typed.length > 2 * LINE_LIMIT) return unread("text-too-long", { limit: 2 * LINE_LIMIT });
  const [, word, rest] = PLAN.exec(typed) ?? [];
  if (word === undefined || rest === undefined) return unread("plan-not-understood", { text: typed });
  const [, date = rest, reason = null] = BECAUSE.exec(rest) ?? [];
  const read = readByWhom(date, context);
  if (!read.ok) return read;
  const { by, byWhom } = read.value;
  if ((byWhom ?? "").length > LINE_LIMIT || (reason ?? "").length > LINE_LIMIT)
    return unread("text-too-long", { limit: LINE_LIMIT });
  return parsed({ act: actOf(word), by, byWhom, reason });
}

export const planField = (words: FieldWords, context: FormContext): FieldSpec<OperatorPlan | null> => ({
  hint: PLAN_HINT,
  ...words,
  read: (text) => readPlan(text, context),
  echo: (plan) => (plan === null ? "As the protocol's row" : printPlan(plan)),
  doubt: (plan) => passedDay(plan?.by ?? null, context.today),
});
