import { addRead } from "#db/queries/reads.ts";
import type { Database } from "#db/sqlite.ts";
import { now } from "#server/clock.ts";

/**
 * What a procedure shows, for the record of who saw what. `key` names the field of the input that holds the id of the
 * patient or tube; `name` says which list, export or print it was. `none`: it shows nothing of a patient.
 */
export type Subject =
  | { readonly kind: "none" }
  | { readonly kind: "patient" | "tube" | "list" | "export" | "print"; readonly key: string }
  | { readonly kind: "list" | "export" | "print"; readonly name: string };

export type Read = { readonly staffId: string; readonly procedure: string; readonly input: unknown };

function idIn(input: unknown, key: string): string {
  const id = input !== null && typeof input === "object" ? Reflect.get(input, key) : undefined;
  if (typeof id !== "string" || id === "") throw new Error(`the input names no ${key}`);
  return id;
}

/** Writes who saw what, when. Throws when the input lacks what the subject names: what cannot be written down is not shown. */
export function recordRead(db: Database, subject: Subject, { staffId, procedure, input }: Read): void {
  if (subject.kind === "none") return;
  const subjectId = "key" in subject ? idIn(input, subject.key) : subject.name;
  addRead(db, { at: now(db), staffId, procedure, subjectKind: subject.kind, subjectId });
}
