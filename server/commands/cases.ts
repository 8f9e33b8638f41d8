import { parseArgs } from "node:util";
import { openDatabase } from "#db/connection.ts";
import { type BooksUsed, clinicBooks, shippedBooks } from "#server/cases/case-books.ts";
import { caseExits, checkCases } from "#server/cases/check-cases.ts";
import { databaseFile } from "#server/commands/database-file.ts";
import { fileNamed } from "#server/commands/file-named.ts";
import { telling } from "#server/commands/telling.ts";
import { DomainError } from "#shared/errors/refusal.ts";

const usage = `  npm run cases -- FILE.json [--report REPORT.json]
With DATABASE_FILE the clinic's newest protocol and calendar are used, without it the EXAMPLE.`;

const notUnderstood = (): DomainError => new DomainError({ code: "command-not-understood", args: { usage } });

function read(args: readonly string[]): { readonly file: string; readonly report: string | null } {
  try {
    const { positionals, values } = parseArgs({
      args: [...args],
      options: { report: { type: "string" } },
      allowPositionals: true,
    });
    const [file, ...more] = positionals;
    if (file === undefined || more.length > 0) throw notUnderstood();
    return { file: fileNamed(file), report: values.report === undefined ? null : fileNamed(values.report) };
  } catch {
    throw notUnderstood();
  }
}

function booksUsed(): BooksUsed {
  if ((process.env.DATABASE_FILE ?? "") === "") return shippedBooks;
  const db = openDatabase(databaseFile());
  try {
    return clinicBooks(db);
  } finally {
    db.sqlite.close();
  }
}

/** `npm run cases -- FILE.json`: the clinic's worked cases against the functions of the screens. */
await telling(async () => {
  const { table, exit } = checkCases({ ...read(process.argv.slice(2)), used: booksUsed() });
  console.log(table);
  process.exitCode = exit;
}, caseExits["cannot run"]);
