import { day } from "#shared/day/day.ts";
import type { Decision } from "#shared/review/decisions.ts";
import type { Payload } from "#shared/tube/payloads.ts";
import { apart, type Entry, type Said, tell } from "#tests/support/factories.ts";

type ReviewSaid = Partial<Omit<Payload<"review decided">, "decided">> & {
  readonly decided?: readonly (readonly [what: Decision, by: string])[];
};

/** "Leave in, review on 1 Sep 2026", by an invented physician, closing the review. */
export const reviewDecided = ({
  decided = [["leave in", "2026-09-01"]],
  ...said
}: Said & ReviewSaid = {}): Entry => {
  const { of, rest } = apart(said);
  const plain = { decidedBy: "Dr. Orla Invented", words: null, closes: ["review" as const], evidence: null };
  const all = decided.map(([what, by]) => ({ what, by: day(by), owner: { role: "nurse" as const } }));
  return tell("review decided", { ...plain, ...rest, decided: all }, of);
};

export const reviewAsked = ({ by = "2026-08-20", ...said }: Said & { readonly by?: string } = {}): Entry => {
  const { of } = apart(said);
  return tell("review asked", { by: day(by), askedBy: "the home nurse", reason: "less and less" }, of);
};

export const decisionDone = ({
  what = "imaging",
  ...said
}: Said & Partial<Payload<"decision done">> = {}): Entry => {
  const { of, rest } = apart(said);
  return tell("decision done", { what, how: null, ...rest }, of);
};
