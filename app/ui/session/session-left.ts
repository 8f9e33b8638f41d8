/** How long a session still lasts, in seconds: until it ends when nothing is done, and until it ends in any case. */
export type SessionLeft = { readonly idleSeconds: number; readonly endsInSeconds: number };

/** Null when the session has ended. */
async function ask(method: "GET" | "POST"): Promise<SessionLeft | null> {
  const answer = await fetch("/api/session", { method });
  if (answer.status === 401) return null;
  if (!answer.ok) throw new Error(`session: ${answer.status}`);
  return (await answer.json()) as SessionLeft;
}

/** Asks without counting as use, so that a page left open does not keep itself signed in. */
export const sessionLeft = (): Promise<SessionLeft | null> => ask("GET");

/** Counts as use: the idle time begins again. */
export const goOn = (): Promise<SessionLeft | null> => ask("POST");
