import { flagStepAct } from "#app/flags/flag-pages.ts";
import { visitStepAct } from "#app/visit/visit-pages.ts";
import type { OpenStep } from "#shared/step/step.ts";
import type { StepKind } from "#shared/tube/step-kinds.ts";

/** Where a step leads, and what it is called there. */
export type StepPage = { readonly href: string; readonly word: string };

export const callHref = (patientId: string): string => `/patients/${patientId}/call`;

/** Answered by one call about all of a patient's tubes. */
const callSteps: Readonly<Partial<Record<StepKind, string>>> = {
  call: "Call",
  "call back": "Call back",
  "alternate contact": "Ring the alternate contact",
  "ask the referrer": "Ring the doctors",
  "ask again": "Call",
  diary: "Call",
};

/** The page of its own on which a step is answered; null where a form answers it. */
export function stepPage(step: OpenStep, patientId: string): StepPage | null {
  const word = callSteps[step.kind];
  if (word !== undefined) return { href: callHref(patientId), word };
  return visitStepAct(step, patientId) ?? flagStepAct(step, patientId);
}
