import type { ReactNode } from "react";

type InQueueProps = {
  readonly tubeId: string;
  /** The tubes of the queue in its order. */
  readonly tubes: readonly string[];
};

/** Where this tube stands in the queue, and those before and after it: `[` and `]` lead there too. */
export function InQueue({ tubeId, tubes }: InQueueProps): ReactNode {
  const at = tubes.indexOf(tubeId);
  const [before, after] = at < 0 ? [undefined, tubes[0]] : [tubes[at - 1], tubes[at + 1]];
  return (
    <nav aria-label="Queue" data-screen-only>
      <a href="/reviews">{at < 0 ? "Not in the queue" : `${at + 1} of ${tubes.length} in the queue`}</a>
      {before !== undefined && (
        <>
          {" · "}
          <a id="queue-before" href={`/tubes/${before}/review`}>
            Previous [
          </a>
        </>
      )}
      {after !== undefined && (
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
