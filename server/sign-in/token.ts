import { createHash, randomBytes } from "node:crypto";

/** 32 random bytes for the cookie. Only its hash is stored: who reads the table cannot sign in with it. */
export const newToken = (): string => randomBytes(32).toString("base64url");

/** SHA-256 in hex. The token is random, so a slow hash would add nothing. */
export const tokenHashOf = (token: string): string => createHash("sha256").update(token).digest("hex");
