import { isInstant } from "#shared/day/instant.ts";
import type { Why } from "#shared/step/step.ts";
import type { AnsweredReason } from "#shared/tube/state.ts";

/** A reason of an alarm as an answer names it. */
export type Answerable = AnsweredReason & { readonly line: Why };

/** What names a reason from readings stands in its line; one that was recorded is named by its entry. */
function named({ code, args, eventId }: Why): AnsweredReason | null {
  if (code === "trouble" || code === "balloon-losses") return { key: `${code}:${eventId}`, until: null };
  const { key, until } = args;
  if (typeof key !== "string" || typeof until !== "number" || !isInstant(until)) return null;
  return { key, until };
}

/** The reasons of an alarm that closing it can answer, in the order in which the alarm tells them. */
export const answerableIn = (lines: readonly Why[]): readonly Answerable[] =>
  lines.flatMap((line) => {
    const reason = named(line);
    return reason === null ? [] : [{ ...reason, line }];
  });
