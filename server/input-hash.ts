import { createHash } from "node:crypto";

/** What the page had seen is no part of what was said: a form opened again from its draft sends the same act. */
const seen: ReadonlySet<string> = new Set(["lastSeen", "lastUpdatedAt"]);

const inKeyOrder = (_: string, value: unknown): unknown =>
  value !== null && typeof value === "object" && !Array.isArray(value)
    ? Object.fromEntries(
        Object.entries(value)
          .filter(([key]) => !seen.has(key))
          .toSorted(([a], [b]) => (a < b ? -1 : 1)),
      )
    : value;

/** SHA-256 of what an input says, as JSON, in hex. The order of keys says nothing, so it changes nothing. */
export const inputHash = (input: unknown): string =>
  createHash("sha256")
    .update(JSON.stringify(input, inKeyOrder) ?? "")
    .digest("hex");
