import { randomBytes } from "node:crypto";
import { hash, verify } from "@node-rs/argon2";
import { passwordLengths } from "#server/sign-in/limits.ts";
import { DomainError } from "#shared/errors/refusal.ts";

/** Argon2id is the library's default. 19 MiB, 2 passes, 1 lane: OWASP Password Storage Cheat Sheet (from memory). */
const cost = { memoryCost: 19 * 1024, timeCost: 2, parallelism: 1 } as const;

/** The same letters typed on two keyboards may differ in code points. */
const asTyped = (password: string): string => password.normalize("NFKC");

/** Takes some milliseconds in another thread: hash before a transaction begins, never inside one. */
export async function hashPassword(password: string): Promise<string> {
  const typed = asTyped(password);
  if (typed.length < passwordLengths.least) {
    throw new DomainError({
      code: "password-too-short",
      field: "password",
      args: { limit: passwordLengths.least },
    });
  }
  if (typed.length > passwordLengths.most) {
    throw new DomainError({
      code: "password-too-long",
      field: "password",
      args: { limit: passwordLengths.most },
    });
  }
  return hash(typed, cost);
}

/** The hash of a password that nobody knows. */
const decoy = hash(randomBytes(32), cost);

/** What stands in place of the hash of an account that was brought in: nobody signs in to it until a password is set. */
export const NO_PASSWORD = "";

/**
 * True when the password fits. Without a hash, for a name that has no account or one that has no password yet, it takes as long as with one and is false:
 * the time of an answer does not tell which names exist.
 */
export async function passwordFits(passwordHash: string | null, password: string): Promise<boolean> {
  const typed = asTyped(password).slice(0, passwordLengths.most + 1);
  const known = passwordHash === NO_PASSWORD ? null : passwordHash;
  const fits = await verify(known ?? (await decoy), typed);
  return fits && known !== null;
}
