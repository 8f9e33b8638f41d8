import type { Day } from "#shared/day/day.ts";
import type { EventKind } from "#shared/tube/payloads.ts";

/** One event as a dwell strip marks it, at its earliest plausible day. */
export type StripMark = { readonly on: Day; readonly kind: EventKind };
