import { createHash } from "node:crypto";

const inKeyOrder = (_: string, value: unknown): unknown =>
  value !== null && typeof value === "object" && !Array.isArray(value)
    ? Object.fromEntries(Object.entries(value).toSorted(([a], [b]) => (a < b ? -1 : 1)))
    : value;

/** SHA-256 of an input as JSON, in hex. The order of keys says nothing, so it changes nothing. */
export const inputHash = (input: unknown): string =>
  createHash("sha256")
    .update(JSON.stringify(input, inKeyOrder) ?? "")
    .digest("hex");
