import { type Parsed, parsed, unread } from "#shared/errors/refusal.ts";
import { type EventKind, type Payload, payloads } from "#shared/tube/payloads.ts";

/** Makes a payload of one version into one of the next; pure, and never edited once released. */
export type Lift = (payload: unknown) => unknown;

/**
 * The steps of each kind, the first from version 1 to 2. A kind without steps is still at version 1. A new version is a step
 * at the end of its list, its new schema in payloads.ts, and a frozen release in tests/frozen.
 */
const steps: Partial<Record<EventKind, readonly Lift[]>> = {};

/** The version at which a payload of this kind is written today. */
export const payloadVersion = (kind: EventKind): number => 1 + (steps[kind]?.length ?? 0);

/** Climbs from a version to the newest. `entry-newer` for a version that these steps do not reach. */
export function climb(ladder: readonly Lift[], version: number, payload: unknown): Parsed<unknown> {
  const newest = ladder.length + 1;
  if (!Number.isInteger(version) || version < 1) return unread("entry-not-understood", { field: "version" });
  if (version > newest) return unread("entry-newer", { version, newest });
  return parsed(ladder.slice(version - 1).reduce((lifted, step) => step(lifted), payload));
}

/** A stored payload at the newest version of its kind, read by its schema. */
export function lift<K extends EventKind>(kind: K, version: number, payload: unknown): Parsed<Payload<K>> {
  const lifted = climb(steps[kind] ?? [], version, payload);
  if (!lifted.ok) return lifted;
  const read = payloads[kind].safeParse(lifted.value);
  if (read.success) return parsed(read.data as Payload<K>);
  return unread("entry-not-understood", { field: read.error.issues[0]?.path.map(String).join(".") ?? "" });
}
