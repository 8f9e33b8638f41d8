import { existsSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import Sqlite from "better-sqlite3";

/** Databases as releases left them, each as SQL text that is named after its last migration. */
const FOLDER = fileURLToPath(new URL("../db/images/", import.meta.url));
const pathOf = (name: string): string => `${FOLDER}${name}.sql`;

/** Oldest first. */
export const keptImages = (): string[] =>
  readdirSync(FOLDER)
    .map((file) => file.replace(/\.sql$/, ""))
    .toSorted();

type Part = { readonly type: string; readonly name: string; readonly sql: string | null };
type Row = Readonly<Record<string, unknown>>;

/** What SQLite stores of the schema, in the order in which it was made. What it makes by itself has no text. */
export const schemaOf = (sqlite: Sqlite.Database): readonly Part[] =>
  sqlite.prepare<[], Part>("select type, name, sql from sqlite_schema where sql is not null").all();

export const tablesOf = (sqlite: Sqlite.Database): readonly string[] =>
  schemaOf(sqlite)
    .filter(({ type }) => type === "table")
    .map(({ name }) => name);

export const columnsOf = (sqlite: Sqlite.Database, table: string): readonly string[] =>
  sqlite.prepare<[], string>(`select name from pragma_table_info('${table}')`).pluck().all();

/** Every row of a table in these columns, in an order of its own. */
export const rowsOf = (
  sqlite: Sqlite.Database,
  table: string,
  columns: readonly string[],
): readonly Row[] => {
  const list = columns.map((column) => `"${column}"`).join(", ");
  return sqlite.prepare<[], Row>(`select ${list} from "${table}" order by ${list}`).all();
};

/** One statement a row, every value as SQLite itself quotes it. In the order in which rows were written: a tube named first stays first. */
function insertsOf(sqlite: Sqlite.Database, table: string): readonly string[] {
  const columns = columnsOf(sqlite, table);
  const values = columns.map((column) => `quote("${column}")`).join(" || ', ' || ");
  const names = columns.map((column) => `"${column}"`).join(", ");
  return sqlite
    .prepare<[], string>(
      `select 'insert into "${table}" (${names}) values (' || ${values} || ');' from "${table}" order by rowid`,
    )
    .pluck()
    .all();
}

function textOf(sqlite: Sqlite.Database): string {
  const schema = schemaOf(sqlite).filter(({ name }) => !name.startsWith("sqlite_"));
  const made = (isTable: boolean) =>
    schema.filter(({ type }) => (type === "table") === isTable).map(({ sql }) => `${sql};`);
  const id = sqlite.pragma("application_id", { simple: true });
  const rows = tablesOf(sqlite).flatMap((table) => insertsOf(sqlite, table));
  return [`pragma application_id = ${id};`, ...made(true), ...rows, ...made(false), ""].join("\n");
}

/** Writes an image. What has been written once is never written again. */
export function keepImage(name: string, sqlite: Sqlite.Database): string {
  const path = pathOf(name);
  if (existsSync(path)) throw new Error(`${path} is kept already.`);
  writeFileSync(path, textOf(sqlite));
  return path;
}

/** Makes a file that is as that release left it. */
export function restoreImage(name: string, file: string): void {
  const sqlite = new Sqlite(file);
  // Rows stand in the order of tables, not of what points to what.
  sqlite.pragma("foreign_keys = OFF");
  sqlite.pragma("journal_mode = WAL");
  sqlite.exec(`begin; ${readFileSync(pathOf(name), "utf8")} commit;`);
  sqlite.close();
}
