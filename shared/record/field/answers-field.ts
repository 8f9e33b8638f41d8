import { isInstant } from "#shared/day/instant.ts";
import { type Parsed, parsed, unread } from "#shared/errors/refusal.ts";
import type { FieldWords } from "#shared/record/field/field-words.ts";
import type { FieldSpec } from "#shared/record/field-spec.ts";
import type { ReasonInForm } from "#shared/record/form.ts";
import type { AnsweredReason } from "#shared/tube/state.ts";

/** Keys hold neither a space nor an "@". */
const ONE = /^([^@\s]+)(?:@(\d+))?$/;
/** What one entry can answer; what is left over stands until the next. */
const MOST = 200;

const asText = ({ key, until }: AnsweredReason): string => (until === null ? key : `${key}@${until}`);

function readOne(text: string): AnsweredReason | null {
  const [, key, until] = ONE.exec(text) ?? [];
  if (key === undefined) return null;
  if (until === undefined) return { key, until: null };
  const at = Number(until);
  return isInstant(at) ? { key, until: at } : null;
}

function readAnswers(text: string): Parsed<readonly AnsweredReason[]> {
  const named = text.split(/\s+/).filter((one) => one !== "");
  if (named.length === 0) return unread("alarm-none");
  const answers = named.map(readOne).filter((answer) => answer !== null);
  return answers.length === named.length ? parsed(answers) : unread("choice-unknown", { text });
}

/**
 * Which reasons of an alarm an entry answers: all that stood when the form opened, or one of them. The text names each, so that one
 * that came up while somebody typed is not answered unseen.
 */
export function answersField(
  words: FieldWords,
  standing: readonly ReasonInForm[],
): FieldSpec<readonly AnsweredReason[]> {
  const alarm = standing.slice(0, MOST);
  const all = alarm.map(asText).join(" ");
  const every = {
    value: all,
    label: alarm.length === 1 ? (alarm[0]?.says ?? "") : `All ${alarm.length} reasons`,
  };
  const each = alarm.length < 2 ? [] : alarm.map((reason) => ({ value: asText(reason), label: reason.says }));
  return {
    ...words,
    initial: all,
    choices: alarm.length === 0 ? [{ value: "", label: "No alarm stands" }] : [every, ...each],
    read: readAnswers,
    echo: (answers) =>
      alarm
        .filter((reason) => answers.some((answer) => asText(answer) === asText(reason)))
        .map(({ says }) => says)
        .join(" "),
  };
}
