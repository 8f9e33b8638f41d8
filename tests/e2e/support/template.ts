import { readFileSync } from "node:fs";
import { join } from "node:path";
import { root } from "#server/commands/root.mjs";
import type { StaffRole } from "#shared/access/roles.ts";

/** The seeded clinic of this run, and who may sign in to it. */
export const templateFile = join(root, "tests", ".cache", "template.sqlite");
export const signInsFile = join(root, "tests", ".cache", "sign-ins.json");

export type SignIn = { readonly role: StaffRole; readonly userName: string; readonly password: string };

/** The demo account of a role. */
export function signInOf(role: StaffRole): SignIn {
  const { signIns } = JSON.parse(readFileSync(signInsFile, "utf8")) as {
    readonly signIns: readonly SignIn[];
  };
  const found = signIns.find((signIn) => signIn.role === role);
  if (found === undefined) throw new Error(`the demo has no ${role}`);
  return found;
}
