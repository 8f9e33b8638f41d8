import { allStaff } from "#db/queries/staff.ts";
import type { Database } from "#db/sqlite.ts";
import type { Story } from "#seed-demo/story.ts";
import type { StaffRole } from "#shared/access/roles.ts";
import type { Instant } from "#shared/day/instant.ts";

type Entry = { readonly actId: string; readonly eventId: string };

/** What has been told so far: patients by their story; tubes and entries by patient and the story's own word. */
export type Known = {
  readonly patients: Map<Story, string>;
  readonly tubes: Map<string, string>;
  readonly entries: Map<string, Entry>;
  readonly visits: Map<string, string>;
};

export type OfPatient<A> = { readonly patientId: string; readonly act: A; readonly instant: Instant };

export function staffOf(db: Database, role: StaffRole) {
  const person = allStaff(db).find((staff) => staff.role === role);
  if (person === undefined) throw new Error(`nobody is ${role}`);
  return person;
}

export function named<T>(known: Map<string, T>, patientId: string, word: string | undefined): T {
  const found = known.get(`${patientId} ${word}`);
  if (found === undefined) throw new Error(`the story has no ${word} yet`);
  return found;
}
