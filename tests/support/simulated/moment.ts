import type { Day } from "#shared/day/day.ts";
import { type Instant, instantAt, zone } from "#shared/day/instant.ts";
import { printMinute } from "#shared/words/offers.ts";

/** When somebody does something, in minutes of the clinic's day. */
export type Moment = { readonly on: Day; readonly minute: number };

/** Of a test database. */
const LONDON = zone("Europe/London");

/** The moment by the clinic's clock. Throws where that clock skips it. */
export function instantOf({ on, minute }: Moment): Instant {
  const at = instantAt(on, printMinute(minute), LONDON);
  if (!at.ok) throw new Error(`no clock shows ${printMinute(minute)} on ${on}`);
  return at.value;
}

const NINE = 9 * 60;

/** The clock of one patient's day: whatever is done is done a minute after what was done before. */
export class DayClock {
  at: Moment;

  constructor(on: Day) {
    this.at = { on, minute: NINE };
  }

  begin(on: Day): void {
    this.at = { on, minute: NINE };
  }

  /** The next moment, not before a minute of the day. */
  next(minute = 0): Moment {
    this.at = { on: this.at.on, minute: Math.max(minute, this.at.minute + 1) };
    return this.at;
  }
}
