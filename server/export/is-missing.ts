/** Whether a file could not be opened because there is none of that name. */
export const isMissing = (error: unknown): boolean =>
  error instanceof Error && "code" in error && (error.code === "ENOENT" || error.code === "EISDIR");
