import type { Session } from "#server/sign-in/session.ts";
import type { Instant } from "#shared/day/instant.ts";

/** Whole seconds, rounded down, until the session ends when nothing is done, and until it ends in any case. */
export type SessionLeft = { readonly idleSeconds: number; readonly endsInSeconds: number };

const secondsUntil = (end: Instant, at: Instant): number => Math.max(0, Math.floor((end - at) / 1000));

export const sessionLeft = ({ idleEndsAt, endsAt }: Session, at: Instant): SessionLeft => ({
  idleSeconds: secondsUntil(idleEndsAt, at),
  endsInSeconds: secondsUntil(endsAt, at),
});
