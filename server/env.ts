import * as z from "zod";
import { DomainError, type Refusal } from "#shared/errors/refusal.ts";

const port = z
  .string()
  .regex(/^\d{1,5}$/)
  .transform(Number)
  .refine((value) => value >= 1 && value <= 65_535);

const addresses = z
  .string()
  .transform((text) => text.split(",").map((address) => address.trim()))
  .pipe(z.array(z.union([z.ipv4(), z.ipv6()])));

const schema = z.object({
  /** The clinic's database. There is no default: a server must not begin an empty one beside the one that was meant. */
  DATABASE_FILE: z.string(),
  /** Loopback unless told: sign-in needs https anywhere else. */
  HOST: z.string().min(1).default("127.0.0.1"),
  PORT: port.default(3000),
  /** Addresses of the proxies whose `x-forwarded-for` is believed, with commas between. */
  TRUSTED_PROXY: addresses.default([]),
});

export type Env = z.infer<typeof schema>;

function refusalOf(name: string, text: string | undefined): Refusal {
  if (text === undefined) return { code: "setting-missing", args: { name } };
  return { code: "setting-not-understood", args: { name, text } };
}

/** The settings. One that is empty counts as not given. Throws a refusal for each that is missing or no such thing. */
export function readEnv(given: Readonly<Record<string, string | undefined>>): Env {
  const filled = Object.fromEntries(Object.entries(given).filter(([, text]) => text !== ""));
  const read = schema.safeParse(filled);
  if (read.success) return read.data;
  const names = new Set(read.error.issues.map((issue) => String(issue.path[0])));
  throw new DomainError([...names].map((name) => refusalOf(name, filled[name])));
}
