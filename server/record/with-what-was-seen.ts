import type { Database } from "#db/sqlite.ts";
import { planAsSeen } from "#server/record/see-passages.ts";
import { evidenceNow } from "#server/review/evidence.ts";
import type { Entry } from "#shared/record/form.ts";
import type { TubeEvent } from "#shared/tube/event.ts";

type Seen = {
  readonly tubeId: string | null;
  /** The entry that this one puts right; null of a new one. */
  readonly amends: TubeEvent | null;
};

/**
 * An entry as it is kept: a plan or a decision with what was seen when it was made, every other as it stands. A decision that is put right
 * keeps what was seen when it was decided.
 */
export function withWhatWasSeen(db: Database, entry: Entry, { tubeId, amends }: Seen): Entry {
  if (tubeId === null) return entry;
  switch (entry.kind) {
    case "exchange planned":
      return { ...entry, payload: planAsSeen(db, entry.payload, tubeId) };
    case "review decided": {
      const before = amends?.kind === "review decided" ? amends.payload.evidence : null;
      return { ...entry, payload: { ...entry.payload, evidence: before ?? evidenceNow(db, tubeId) } };
    }
    default:
      return entry;
  }
}
