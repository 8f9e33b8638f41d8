/** Who is rung about a patient. */
export const callees = [
  "the patient",
  "the alternate contact",
  "the home nurse",
  "the ward",
  "the referrer",
  "the family doctor",
] as const;
export type Callee = (typeof callees)[number];

/** How a try came out. A message left on a machine reached nobody. */
export const tryOutcomes = [
  "reached the patient",
  "reached a carer",
  "voicemail",
  "no answer",
  "call back",
  "wrong number",
  "refused",
] as const;
export type TryOutcome = (typeof tryOutcomes)[number];

export const isReached = (outcome: TryOutcome): boolean =>
  outcome === "reached the patient" || outcome === "reached a carer";

/** The outcome that a text names; undefined where it names none, or not yet. */
export const outcomeIn = (text: string | undefined): TryOutcome | undefined =>
  tryOutcomes.find((outcome) => outcome === text);

/** What is answered to a question of a call. Not asked is an answer of its own: it opens nothing, and is never read as good. */
export const answerWords = ["yes", "no", "does not know", "not asked"] as const;
export type AnswerWord = (typeof answerWords)[number];

/** To whom a letter goes when telephoning did not do. */
export const letterTos = ["the patient", "the referrer and the family doctor"] as const;
export type LetterTo = (typeof letterTos)[number];
