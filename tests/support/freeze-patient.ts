import { day } from "#shared/day/day.ts";
import { payloadVersion } from "#shared/tube/lift.ts";
import type * as make from "#tests/support/factories.ts";
import { history } from "#tests/support/told.ts";

/** A patient of a frozen release: entries as that release stores them. */
export const patient = (name: string, bornOn: string | null, ...entries: readonly make.Entry[]) => ({
  name,
  bornOn: bornOn === null ? null : day(bornOn),
  events: history(...entries).map((event) => ({ ...event, payloadVersion: payloadVersion(event.kind) })),
});
