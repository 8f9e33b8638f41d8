import { parseArgs } from "node:util";
import { fileNamed } from "#server/commands/file-named.ts";
import { DomainError } from "#shared/errors/refusal.ts";
import type { DateOrder, NameOrder } from "#shared/sheet/answers.ts";
import { type Encoding, encodings } from "#shared/sheet/encoding.ts";

const usage = `  npm run import -- RECORD.json                  the whole record of another Dwellbook, into a new database
  npm run import -- LIST.csv --by USER-NAME      a clinic's own list of tubes
      [--dates day-first|month-first] [--names family-first|given-first] [--issuer "WHO ISSUED THE NUMBERS"]
      [--encoding ${encodings.join("|")}]
      [--column "HEADING=WHAT IT SAYS"]...       "left out" for a column that is not brought in
      [--yes]                                    without it, how each row would stand is told and asked`;

const flags = {
  by: { type: "string" },
  dates: { type: "string" },
  names: { type: "string" },
  issuer: { type: "string" },
  encoding: { type: "string" },
  column: { type: "string", multiple: true },
  yes: { type: "boolean", default: false },
} as const;

const dateOrders: ReadonlyMap<string, DateOrder> = new Map([
  ["day-first", "day first"],
  ["month-first", "month first"],
]);
const nameOrders: ReadonlyMap<string, NameOrder> = new Map([
  ["family-first", "family name first"],
  ["given-first", "given name first"],
]);
const encodingNames: ReadonlyMap<string, Encoding> = new Map(encodings.map((name) => [name, name]));

/** What one `--column` says: the heading, and what the column is matched to. */
export type ColumnOption = { readonly heading: string; readonly says: string };

export type ListOptions = {
  readonly by: string | null;
  readonly dateOrder: DateOrder | null;
  readonly nameOrder: NameOrder | null;
  readonly issuer: string | null;
  readonly encoding: Encoding | null;
  readonly columns: readonly ColumnOption[];
  readonly yes: boolean;
};

const notUnderstood = (): DomainError => new DomainError({ code: "command-not-understood", args: { usage } });

function parse(args: readonly string[]) {
  try {
    return parseArgs({ args: [...args], options: flags, allowPositionals: true });
  } catch {
    throw notUnderstood();
  }
}

function oneOf<T>(typed: string | undefined, choices: ReadonlyMap<string, T>): T | null {
  if (typed === undefined) return null;
  const chosen = choices.get(typed);
  if (chosen === undefined) throw notUnderstood();
  return chosen;
}

/** "Tube=Kind"; a heading may hold an equals sign, what it says holds none. */
function columnOption(typed: string): ColumnOption {
  const [, heading = "", says = ""] = /^(.+)=([^=]+)$/.exec(typed) ?? [];
  if (heading.trim() === "" || says.trim() === "") throw notUnderstood();
  return { heading, says };
}

/** What was typed behind `npm run import --`. Throws `text-missing` without a file, and `command-not-understood`. */
export function importOptions(args: readonly string[]): { readonly file: string } & ListOptions {
  const { positionals, values } = parse(args);
  const [named, ...more] = positionals;
  if (named === undefined)
    throw new DomainError({ code: "text-missing", args: { what: "the file to bring in" } });
  if (more.length > 0) throw notUnderstood();
  return {
    file: fileNamed(named),
    by: values.by ?? null,
    dateOrder: oneOf(values.dates, dateOrders),
    nameOrder: oneOf(values.names, nameOrders),
    issuer: values.issuer?.trim() || null,
    encoding: oneOf(values.encoding, encodingNames),
    columns: (values.column ?? []).map(columnOption),
    yes: values.yes,
  };
}
