import type { SignedIn } from "#app/_trpc/server.ts";
import type { OpenStep } from "#shared/step/step.ts";

type Flags = SignedIn["api"]["flag"];

/** A red flag, and the page on which one is raised, as the API answers them. */
export type FlagPage = Awaited<ReturnType<Flags["view"]>>;
export type RaisingPage = Awaited<ReturnType<Flags["raising"]>>;

export const flagHref = (patientId: string, flagId: string): string =>
  `/patients/${patientId}/flags/${flagId}`;

export const raiseHref = (patientId: string): string => `/patients/${patientId}/flags/new`;

/** Where a tube that is out is recorded: of that tube, where it is known. */
export const tubeOutHref = (patientId: string, tubeId?: string): string =>
  `/patients/${patientId}/tube-out${tubeId === undefined ? "" : `?${new URLSearchParams({ tube: tubeId })}`}`;

/** Where a red flag that is open goes on, and the one act that it needs; null of any other step. The step is named after its flag. */
export function flagStepAct(
  { id, kind, why }: Pick<OpenStep, "id" | "kind" | "why">,
  patientId: string,
): { href: string; word: string } | null {
  if (kind !== "red flag") return null;
  const unhanded = why.some(({ code }) => code === "flag-not-handed");
  return {
    href: flagHref(patientId, id.slice(0, -kind.length - 1)),
    word: unhanded ? "Hand it to somebody" : "Record what was done",
  };
}
