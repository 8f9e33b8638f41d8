/** How far each list that is being brought in has come. Of this process alone, and gone with it: whoever waits asks again. */
const read = new Map<string, number>();

export const progressOf = (sheetId: string): number | null => read.get(sheetId) ?? null;

/** Tells others how far a piece of work is while it runs. */
export async function withProgress<T>(
  sheetId: string,
  work: (told: (done: number) => void) => Promise<T>,
): Promise<T> {
  read.set(sheetId, 0);
  try {
    return await work((done) => read.set(sheetId, done));
  } finally {
    read.delete(sheetId);
  }
}
