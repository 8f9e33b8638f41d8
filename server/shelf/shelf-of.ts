import { type ShelfRow, typesOnShelf } from "#db/queries/shelf.ts";
import type { Database } from "#db/sqlite.ts";
import type { ShelfType } from "#shared/shelf/shelf-type.ts";

export const shelfTypeOf = ({ id, sort, name, facts }: ShelfRow): ShelfType => ({ id, sort, name, ...facts });

/** What the clinic has on its shelf now, by name. */
export const shelfOf = (db: Database): readonly ShelfType[] => typesOnShelf(db).map(shelfTypeOf);
