import { type Day, later } from "#shared/day/day.ts";
import { onDay, type When } from "#shared/day/when.ts";
import type { EventOf, TubeEvent } from "#shared/tube/event.ts";
import { type EventKind, payloads } from "#shared/tube/payloads.ts";

type Amendment = EventOf<"amended"> | EventOf<"voided">;

const isAmendment = (event: TubeEvent): event is Amendment =>
  event.kind === "amended" || event.kind === "voided";

/** Kinds that open a record; everything else happens to a tube that has one. */
export const opensTube = (kind: EventKind): boolean =>
  kind === "placed" || kind === "taken over" || kind === "converted";

/** An event as it stands after every amendment, with the moment that it is folded at. */
export type Standing = {
  readonly event: TubeEvent;
  /** When it happened, cut to what is possible after the tube's opening. */
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
 * or voided, which brings back what stood before it.
 */
export function standingEvents(events: readonly TubeEvent[]): Standing[] {
  const amendments = new Map<string, Amendment[]>();
  for (const event of events) {
    if (!isAmendment(event) || event.amends === null) continue;
    amendments.set(event.amends, [...(amendments.get(event.amends) ?? []), event]);
  }
  const resolve = (event: TubeEvent): { event: TubeEvent; by: string[] } | null => {
    let now: { event: TubeEvent; by: string[] } | null = { event, by: [] };
    for (const candidate of amendments.get(event.id) ?? []) {
      const amendment = resolve(candidate)?.event;
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

const EVER = "0000-00-00";

/** The part of a span that lies on or after a day: an exchange "in March" of a tube placed on the 10th. */
function onOrAfter(when: When, opening: Day | undefined): When {
  if (opening === undefined || when.precision === "unknown" || when.earliest >= opening) return when;
  if (when.latest < opening) return when;
  return when.latest === opening ? onDay(opening) : { ...when, precision: "span", earliest: opening };
}

/**
 * Fold order: earliest plausible day, then clock time (start of the day when unknown), then sequence within the day, then
 * recorded sequence. An undated event cannot precede the opening of its tube, so it follows it.
 */
function inOrder(standing: readonly Standing[]): Standing[] {
  const openings = new Map<string, Day>();
  for (const { event } of standing) {
    if (!opensTube(event.kind) || event.when.earliest === null) continue;
    for (const tube of openedTubes(event)) openings.set(tube, event.when.earliest);
  }
  const keyed = standing.map((item) => {
    const opening = item.event.tubes
      .map((tube) => openings.get(tube))
      .reduce<Day | undefined>(
        (a, b) => (a === undefined || b === undefined ? (a ?? b) : later(a, b)),
        undefined,
      );
    const follows = !opensTube(item.event.kind);
    const when = follows ? onOrAfter(item.when, opening) : item.when;
    const earliest = when.earliest ?? (follows ? opening : undefined) ?? EVER;
    const rank = when.earliest === null && follows ? 1 : 0;
    return { item: { ...item, when }, earliest, time: item.event.time ?? "00:00", rank };
  });
  keyed.sort(
    (a, b) =>
      compare(a.earliest, b.earliest) ||
      compare(a.time, b.time) ||
      a.rank - b.rank ||
      a.item.event.daySequence - b.item.event.daySequence ||
      a.item.event.seq - b.item.event.seq,
  );
  return keyed.map((entry) => entry.item);
}

const compare = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

/** The tubes whose record the event opens. */
export const openedTubes = (event: TubeEvent): readonly string[] =>
  event.kind === "converted" ? [event.payload.opens] : opensTube(event.kind) ? event.tubes : [];
