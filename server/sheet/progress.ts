import type { Telling } from "#server/sheet/telling.ts";
import { ASKED_EVERY_MS, type Progress, SAID_FROM_S } from "#shared/sheet/progress.ts";

/** How far each list that is being brought in has come. Of this process alone, and gone with it: whoever waits asks again. */
const lists = new Map<string, Progress>();

export const progressOf = (sheetId: string): Progress | null => lists.get(sheetId) ?? null;

/** While rows are written nobody is answered. Waiting so long lets everybody who asks now and then hear of it before. */
const ASKED_ONCE_MS = 1.5 * ASKED_EVERY_MS;

const pause = (ms: number): Promise<void> => new Promise((resolve) => setTimeout(resolve, ms));

/** Tells others how far a list has come while it is brought in. */
export async function withProgress<T>(sheetId: string, work: (telling: Telling) => Promise<T>): Promise<T> {
  let read = 0;
  const tell = (writesForS: number | null): unknown => lists.set(sheetId, { read, writesForS });
  tell(null);
  try {
    return await work({
      read: (rows) => {
        read = rows;
        tell(null);
      },
      writing: async (seconds) => {
        tell(seconds);
        if (seconds >= SAID_FROM_S) await pause(ASKED_ONCE_MS);
      },
    });
  } finally {
    lists.delete(sheetId);
  }
}
