import type { AnswerWord, Callee, TryOutcome } from "#shared/call/outcomes.ts";
import type { Opened } from "#shared/call/questions.ts";
import type { Clocks } from "#shared/call/reach.ts";
import type { Day } from "#shared/day/day.ts";
import type { WhenAt } from "#shared/day/read-when-at.ts";
import type { QuestionRow, ThenRecord } from "#shared/protocol/call-rows.ts";
import type { RedFlagRow } from "#shared/protocol/red-flag-rows.ts";
import type { FormContext } from "#shared/record/form.ts";

export type FlagInCall = Pick<RedFlagRow, "id" | "level" | "says" | "untilReached">;

/** One question as a form asks it, with what its answer opens. */
export type QuestionInCall = Pick<QuestionRow, "id" | "asks" | "opensOn"> & {
  /** Null: asked of the patient. `title` tells tubes apart. */
  readonly tube: { readonly id: string; readonly number: number; readonly title: string } | null;
  readonly flag: FlagInCall | null;
  readonly ifSo: readonly (Pick<Opened["ifSo"][number], "of"> & { readonly flag: FlagInCall })[];
  readonly thenRecord: ThenRecord | null;
  /** A volume that was told of this tube within the last 24 hours, in words: a "no" to whether it drains does not agree with it. */
  readonly drained: string | null;
};

/** What a call is typed beside. */
export type CallingContext = Pick<FormContext, "today" | "now" | "zone"> & {
  readonly questions: readonly QuestionInCall[];
  /** Who is rung first, and on which number. */
  readonly to: Callee;
  readonly number: string | null;
  /** In which language, where somebody has to speak it. */
  readonly interpreter: string | null;
  readonly clocks: Clocks;
  /** Hours by the patient's clock in which somebody is rung; null is no row. */
  readonly hours: { readonly from: number; readonly to: number } | null;
};

export type AnsweredInCall = { readonly question: QuestionInCall; readonly says: AnswerWord };

/** What a caller typed: the call, and what was answered. */
export type CallTyped = WhenAt & {
  readonly to: Callee;
  readonly number: string | null;
  readonly outcome: TryOutcome;
  readonly back: { readonly on: Day; readonly at: string | null } | null;
  readonly interpreter: string | null;
  readonly answers: readonly AnsweredInCall[];
  /** Whom the red flags that were opened are handed to: a person, nobody yet, or null where none was opened. */
  readonly handed: { readonly to: string | null } | null;
  readonly note: string | null;
};
