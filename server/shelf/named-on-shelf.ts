import { shelfChangesUntil } from "#db/queries/shelf.ts";
import type { Database } from "#db/sqlite.ts";
import { shelfOf } from "#server/shelf/shelf-of.ts";
import type { Instant } from "#shared/day/instant.ts";
import { fromShelfField } from "#shared/record/tube/from-shelf.ts";
import type { ShelfType } from "#shared/shelf/shelf-type.ts";

/** The shelf as it was at that instant, by the changes until then. */
function shelfAt(db: Database, at: Instant): readonly ShelfType[] {
  const last = new Map(shelfChangesUntil(db, at).map(({ typeId, after }) => [typeId, after]));
  return [...last].flatMap(([id, { sort, name, facts, inUse }]) =>
    inUse ? [{ id, sort, name, ...facts }] : [],
  );
}

const read = (shelf: readonly ShelfType[], name: string): ShelfType | null => {
  const type = fromShelfField({ shelf }).read(name);
  return type.ok ? type.value : null;
};

const same = (one: ShelfType | null, other: ShelfType | null): boolean =>
  JSON.stringify(one) === JSON.stringify(other);

/** The tube that a name meant at that instant, where it means another by now, or none; null where it says what it said. */
export function meantOtherwise(db: Database, name: string, at: Instant): ShelfType | null {
  if (name.trim() === "") return null;
  const then = read(shelfAt(db, at), name);
  return same(then, read(shelfOf(db), name)) ? null : then;
}
