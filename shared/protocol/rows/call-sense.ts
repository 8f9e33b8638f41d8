import type { Refusal } from "#shared/errors/refusal.ts";
import { type CallRows, dayParts, MOST_ATTEMPTS, type QuestionRow } from "#shared/protocol/call-rows.ts";
import type { Protocol } from "#shared/protocol/protocol.ts";
import { addressOf } from "#shared/protocol/rows/address.ts";
import type { Nonsense } from "#shared/protocol/rows/nonsense.ts";

type Hours = CallRows["hours"][number];

/** A flag that no row names would be opened, and nobody told. */
function flagSense({ id, redFlag, instead }: QuestionRow, flags: readonly string[]): readonly Refusal[] {
  const named = [
    { field: "redFlag", text: redFlag },
    ...instead.map((other, at) => ({ field: `instead.${at + 1}.redFlag`, text: other.redFlag })),
  ];
  return named.flatMap(({ field, text }): readonly Refusal[] =>
    text === null || flags.includes(text)
      ? []
      : [{ code: "red-flag-not-in-table", field, args: { row: id, text } }],
  );
}

/** Of two flags for one sort of patient only the first would be opened. */
const insteadTwice = ({ instead }: QuestionRow): readonly Refusal[] =>
  instead.flatMap(({ of }, at): readonly Refusal[] =>
    instead.findIndex((other) => other.of === of) === at
      ? []
      : [{ code: "row-says-twice", field: `instead.${at + 1}.of`, args: { text: of } }],
  );

/** What is opened, and the answer that opens it, are of no use without one another. */
function answerSense({ opensOn, redFlag, instead, thenRecord }: QuestionRow): readonly Refusal[] {
  const [opened] = [redFlag, ...instead.map((other) => other.redFlag), thenRecord].filter(
    (what) => what !== null,
  );
  if (opensOn === null && opened !== undefined)
    return [{ code: "question-without-answer", field: "opensOn", args: { text: opened } }];
  if (opensOn !== null && opened === undefined)
    return [{ code: "answer-opens-nothing", field: "opensOn", args: { text: opensOn } }];
  return [];
}

function questionSense(questions: readonly QuestionRow[], flags: readonly string[]): readonly Nonsense[] {
  return questions.flatMap((row) =>
    [...flagSense(row, flags), ...insteadTwice(row), ...answerSense(row)].map((refusal) => ({
      address: addressOf("calls.questions", row.id),
      refusal,
    })),
  );
}

function attemptSense({ notReached }: CallRows): readonly Nonsense[] {
  if (notReached === null || notReached.attempts <= MOST_ATTEMPTS) return [];
  const args = { attempts: notReached.attempts, limit: MOST_ATTEMPTS };
  return [{ address: "calls.notReached", refusal: { code: "attempts-too-many", field: "attempts", args } }];
}

/** Said of the physician's row and of each behind it, so that whichever is typed has it beside its field. */
function rungSense(rungs: CallRows["rungs"]): readonly Nonsense[] {
  const last = rungs.findIndex(({ rung }) => rung === "physician");
  const behind = last < 0 ? [] : rungs.slice(last + 1).map(({ rung }) => rung);
  const [first] = behind;
  if (first === undefined) return [];
  const said = (at: string, rung: string): Nonsense => ({
    address: addressOf("calls.rungs", at),
    refusal: { code: "physician-not-last", field: "rung", args: { rung } },
  });
  return [said("physician", first), ...behind.map((rung) => said(rung, rung))];
}

const lengthSense = ({ part, from, to }: Hours): readonly Nonsense[] =>
  from === to
    ? [
        {
          address: addressOf("calls.hours", part),
          refusal: { code: "call-hours-without-length", field: "to", args: { from } },
        },
      ]
    : [];

/** Parts follow one another through the day, whichever row stands first; said of both that do not. */
function partSense(hours: readonly Hours[]): readonly Nonsense[] {
  const inDay = dayParts.flatMap((part) => hours.filter((row) => row.part === part));
  return inDay.flatMap((next, at): readonly Nonsense[] => {
    const before = inDay[at - 1];
    if (before === undefined || before.part === next.part || before.to <= next.from) return [];
    const args = { part: next.part, from: next.from, before: before.part, to: before.to };
    const said = (part: string, field: "from" | "to"): Nonsense => ({
      address: addressOf("calls.hours", part),
      refusal: { code: "call-hours-overlap", field, args },
    });
    return [said(before.part, "to"), said(next.part, "from")];
  });
}

/** What speaks against the rows of calls, each by itself and beside one another and the red flags. */
export function callSense({ calls, redFlags }: Protocol): readonly Nonsense[] {
  if (calls === null) return [];
  const flags = redFlags.map(({ id }) => id);
  return [
    ...questionSense(calls.questions, flags),
    ...attemptSense(calls),
    ...rungSense(calls.rungs),
    ...calls.hours.flatMap(lengthSense),
    ...partSense(calls.hours),
  ];
}
