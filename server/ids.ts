import { randomBytes } from "node:crypto";

/** A new id: 128 random bits as 22 letters, digits, `-` and `_`, fit for a URL. */
export const newId = (): string => randomBytes(16).toString("base64url");
