import { isTRPCClientError } from "@trpc/client";
import { signInAgain } from "#app/ui/session/sign-in-again.ts";
import type { Refusal } from "#shared/errors/refusal.ts";

/** How sending an act came out. `unanswered`: whether it was entered is not known, and the same act id may be sent again. */
export type Sent<Result> =
  | { readonly kind: "saved"; readonly result: Result }
  | { readonly kind: "refused"; readonly refusals: readonly Refusal[] }
  | { readonly kind: "unanswered" };

type Answer<Result> = Sent<Result> | { readonly kind: "signed-out" };

const PAUSES_MS = [400, 1200, 3000];

/** What the API puts into an error: its code, and the refusals of an entry that was not written. */
function dataOf(error: unknown): { readonly code?: string; readonly refusals?: readonly Refusal[] } {
  return isTRPCClientError(error) && error.data ? error.data : {};
}

async function sendOnce<Result>(send: () => Promise<Result>): Promise<Answer<Result>> {
  try {
    return { kind: "saved", result: await send() };
  } catch (error) {
    const { code, refusals } = dataOf(error);
    if (code === "UNAUTHORIZED") return { kind: "signed-out" };
    if (refusals !== undefined && refusals.length > 0) return { kind: "refused", refusals };
    return { kind: "unanswered" };
  }
}

const pause = (ms: number): Promise<void> => new Promise((resolve) => setTimeout(resolve, ms));

/**
 * Sends an act until an answer comes, a few times. `send` must carry the same act id each time, so that an act whose
 * answer was lost is entered once. A session that has ended is taken up again over the page, and the act sent then.
 */
export async function sendAct<Result>(send: () => Promise<Result>): Promise<Sent<Result>> {
  for (const ms of [...PAUSES_MS, 0]) {
    const answer = await sendOnce(send);
    if (answer.kind === "saved" || answer.kind === "refused") return answer;
    if (answer.kind === "signed-out") await signInAgain();
    else await pause(ms);
  }
  return { kind: "unanswered" };
}
