import { newestVersions } from "#db/queries/versions.ts";
import type { Database } from "#db/sqlite.ts";
import { openingCalendar } from "#server/clinic/open-clinic.ts";
import { calendarOf, protocolOf } from "#server/record/books.ts";
import type { CaseBooks } from "#shared/case/looking.ts";
import { DomainError } from "#shared/errors/refusal.ts";
import { exampleProtocol } from "#shared/protocol/example.ts";

/** The tables that cases are run with, and where they come from, in words. */
export type BooksUsed = { readonly books: CaseBooks; readonly from: string };

/** What the program brings, where no database is named. */
export const shippedBooks: BooksUsed = {
  books: { protocol: exampleProtocol, calendar: openingCalendar },
  from: "as the program brings them",
};

/** The newest versions of the clinic's own tables: what a clock that starts today is pinned to. */
export function clinicBooks(db: Database): BooksUsed {
  const newest = newestVersions(db);
  if (newest === null) throw new DomainError({ code: "no-pins" });
  const books = { protocol: protocolOf(db, newest.protocol), calendar: calendarOf(db, newest.calendar) };
  return { books, from: "of the clinic's database" };
}
