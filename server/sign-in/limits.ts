const SECOND_MS = 1000;
const MINUTE_MS = 60 * SECOND_MS;
const HOUR_MS = 60 * MINUTE_MS;

/** How long a sign-in lasts. Our choice, no source: shared computers on a ward against forms filled in on the telephone. */
export const sessionLimits = {
  /** Longer than one telephone call with a patient, shorter than a shared computer stands alone. */
  idleMs: 20 * MINUTE_MS,
  /** A working day with its breaks; nobody is still signed in the next morning. */
  absoluteMs: 10 * HOUR_MS,
  /** Enough to come back to the keyboard and go on. */
  warnMs: 2 * MINUTE_MS,
  /** Use is stored at most this often: each store is a durable write. */
  touchMs: 30 * SECOND_MS,
} as const;

export type Patience = {
  /** Wrong sign-ins before the first wait. */
  readonly free: number;
  /** The wait after that many, doubled with each further one ... */
  readonly firstWaitMs: number;
  /** ... up to this. There is no wait without an end: locking people out is a way to attack a clinic. */
  readonly longestWaitMs: number;
};

/** Our choice, no source. At the longest wait, somebody who guesses has about 100 tries a day at one account. */
export const patience = {
  account: { free: 5, firstWaitMs: MINUTE_MS, longestWaitMs: 15 * MINUTE_MS },
  /** A clinic may sit behind one address, so an address has more. */
  address: { free: 30, firstWaitMs: MINUTE_MS, longestWaitMs: 15 * MINUTE_MS },
} as const satisfies Record<string, Patience>;

/** A count is forgotten when nothing went wrong for so long. */
export const FORGET_AFTER_MS = 2 * HOUR_MS;

/** How long a sign-in is refused after that many wrong ones; 0 while they are free. */
export function waitMs(failures: number, { free, firstWaitMs, longestWaitMs }: Patience): number {
  if (failures < free) return 0;
  return Math.min(longestWaitMs, firstWaitMs * 2 ** Math.min(failures - free, 20));
}

/** In characters. Our choice; NIST SP 800-63B asks for 8 at least and for 64 to be allowed (from memory). */
export const passwordLengths = { least: 12, most: 200 } as const;
