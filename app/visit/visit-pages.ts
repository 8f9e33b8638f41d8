import type { SignedIn } from "#app/_trpc/server.ts";

type Visits = SignedIn["api"]["visit"];

/** Slots on offer, and a visit, as the API answers them. */
export type SlotsPage = Awaited<ReturnType<Visits["offers"]>>;
export type VisitPage = Awaited<ReturnType<Visits["view"]>>;

export const visitHref = (patientId: string, visitId: string): string =>
  `/patients/${patientId}/visits/${visitId}`;

/** Where a visit is booked: for the tubes that come together with one, or with whichever is due first. */
export const bookingHref = (patientId: string, first?: string): string =>
  `/patients/${patientId}/visit${first === undefined ? "" : `?${new URLSearchParams({ first })}`}`;
