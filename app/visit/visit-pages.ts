import type { SignedIn } from "#app/_trpc/server.ts";
import type { OpenStep } from "#shared/step/step.ts";

type Visits = SignedIn["api"]["visit"];

/** Slots on offer, and a visit, as the API answers them. */
export type SlotsPage = Awaited<ReturnType<Visits["offers"]>>;
export type VisitPage = Awaited<ReturnType<Visits["view"]>>;

export const visitHref = (patientId: string, visitId: string): string =>
  `/patients/${patientId}/visits/${visitId}`;

/** The visit that a step asks about, by the step's id. */
export const visitOfStep = ({ id, kind }: Pick<OpenStep, "id" | "kind">): string =>
  id.slice(0, -kind.length - 1);

/** Where a step of a visit is answered; null of any other step. */
export function visitStepAct(step: OpenStep, patientId: string): { href: string; word: string } | null {
  const visitId = visitOfStep(step);
  switch (step.kind) {
    case "visit":
      return { href: visitHref(patientId, visitId), word: "To the visit" };
    case "prepare visit":
      return { href: `${visitHref(patientId, visitId)}/settle`, word: "Note what is settled" };
    case "rebook":
      return { href: bookingHref(patientId, step.tubeId ?? undefined), word: "Book again: three slots" };
    default:
      return null;
  }
}

/** Where a visit is booked: for the tubes that come together with one, or with whichever is due first. */
export const bookingHref = (patientId: string, first?: string): string =>
  `/patients/${patientId}/visit${first === undefined ? "" : `?${new URLSearchParams({ first })}`}`;
