import type { CriterionEvidence, Weighed } from "#shared/output/criterion/criterion.ts";

export const noEvidence: CriterionEvidence = { days: [], sessions: [], readings: [], events: [] };
export const nothingWeighed: Weighed = { against: [], unknown: [], forIt: [], evidence: noEvidence };

/** What several parts say together, in their order. */
export const together = (parts: readonly Partial<Weighed>[]): Weighed => {
  const evidence = parts.map((part) => part.evidence ?? noEvidence);
  return {
    against: parts.flatMap(({ against = [] }) => against),
    unknown: parts.flatMap(({ unknown = [] }) => unknown),
    forIt: parts.flatMap(({ forIt = [] }) => forIt),
    evidence: {
      days: evidence.flatMap(({ days }) => days),
      sessions: evidence.flatMap(({ sessions }) => sessions),
      readings: [...new Set(evidence.flatMap(({ readings }) => readings))],
      events: [...new Set(evidence.flatMap(({ events }) => events))],
    },
  };
};
