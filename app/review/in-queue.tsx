import type { ReactNode } from "react";
import type { SignedIn } from "#app/_trpc/server.ts";

type InQueueProps = { readonly place: Awaited<ReturnType<SignedIn["api"]["review"]["place"]>> };

/** Where this tube stands in the queue, and those before and after it: `[` and `]` lead there too. */
export function InQueue({ place: { at, of, before, after } }: InQueueProps): ReactNode {
  return (
    <nav aria-label="Queue" data-screen-only>
      <a href="/reviews">{at === 0 ? "Not in the queue" : `${at} of ${of} in the queue`}</a>
      {before !== null && (
        <>
          {" · "}
          <a id="queue-before" href={`/tubes/${before}/review`}>
            Previous [
          </a>
        </>
      )}
      {after !== null && (
        <>
          {" · "}
          <a id="queue-after" href={`/tubes/${after}/review`}>
            Next ]
          </a>
        </>
      )}
    </nav>
  );
}
