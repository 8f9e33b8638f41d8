import { closeSync, openSync } from "node:fs";

const isTaken = (error: unknown): boolean =>
  error instanceof Error && "code" in error && error.code === "EEXIST";

/** Makes an empty file that its owner alone may read; false when there is a file of that name already. */
export function claimFile(file: string): boolean {
  try {
    closeSync(openSync(file, "wx", 0o600));
    return true;
  } catch (error) {
    if (isTaken(error)) return false;
    throw error;
  }
}
