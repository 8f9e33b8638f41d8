import type { When } from "#shared/day/when.ts";
import type { EventOf, TubeEvent } from "#shared/tube/event.ts";
import { inOrder } from "#shared/tube/order.ts";
import { payloads } from "#shared/tube/payloads.ts";

type Amendment = EventOf<"amended"> | EventOf<"voided">;

const isAmendment = (event: TubeEvent): event is Amendment =>
  event.kind === "amended" || event.kind === "voided";

/** An event as it stands after every amendment, with the moment that it is folded at. */
export type Standing = {
  readonly event: TubeEvent;
  /** When it happened, cut to what is possible beside the other entries. */
  readonly when: When;
  readonly amendedBy: readonly string[];
};

function replaced(event: TubeEvent, by: EventOf<"amended">): TubeEvent {
  const read = payloads[event.kind].safeParse(by.payload.payload);
  // An amendment is checked when it is recorded; one that no longer reads leaves the entry as it was.
  if (!read.success) return event;
  return { ...event, when: by.payload.when, time: by.payload.time, payload: read.data } as TubeEvent;
}

/**
 * The entries that stand: each with its newest standing amendment, voided ones gone. An amendment may itself be amended
 * or voided, which brings back what stood before it. The order of the list itself says nothing.
 */
export function standingEvents(events: readonly TubeEvent[]): Standing[] {
  const amendments = new Map<string, Amendment[]>();
  for (const event of events.toSorted((a, b) => a.seq - b.seq)) {
    if (!isAmendment(event) || event.amends === null) continue;
    amendments.set(event.amends, [...(amendments.get(event.amends) ?? []), event]);
  }
  const resolve = (event: TubeEvent): { event: TubeEvent; by: string[] } | null => {
    let now: { event: TubeEvent; by: string[] } | null = { event, by: [] };
    for (const candidate of amendments.get(event.id) ?? []) {
      // Only what was recorded later can speak of it; so no entry can amend itself, not even round a corner.
      const amendment = candidate.seq > event.seq ? resolve(candidate)?.event : undefined;
      if (amendment === undefined) continue;
      if (amendment.kind === "voided") now = null;
      if (amendment.kind === "amended") now = { event: replaced(event, amendment), by: [amendment.id] };
    }
    return now;
  };
  return inOrder(
    events.flatMap((event) => {
      if (isAmendment(event)) return [];
      const standing = resolve(event);
      return standing === null
        ? []
        : [{ event: standing.event, when: standing.event.when, amendedBy: standing.by }];
    }),
  );
}
