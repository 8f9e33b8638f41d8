import { parsed } from "#shared/errors/refusal.ts";
import type { LeafSpec, LeafValue } from "#shared/protocol/rows/leaf.ts";
import { isBlank, readLeaf } from "#shared/protocol/rows/read-leaf.ts";
import type { Choice, FieldSpec } from "#shared/record/field-spec.ts";
import type { Length } from "#shared/size/length.ts";
import { printBoth } from "#shared/size/print-length.ts";

/** More words than fit into one line on a narrow page. */
const LONG = 60;
/** More choices than can be named beneath a field; one that is not among them is refused with all of them. */
const NAMED = 12;

function hintOf(value: LeafValue): string | undefined {
  switch (value.is) {
    case "length":
      return "with its unit, like 0.05 mm or 0.001 in";
    case "some of":
      return value.options.length > NAMED
        ? "with commas between, each by its beginning"
        : `with commas between: ${value.options.join(", ")}`;
    case "numbers":
      return "with commas between";
    default:
      return undefined;
  }
}

const offered = (options: readonly string[], blank: string): readonly Choice[] => [
  { value: "", label: blank },
  ...options.map((value) => ({ value, label: value })),
];

function choicesOf({ value, mayBeBlank }: LeafSpec): readonly Choice[] | undefined {
  const blank = mayBeBlank ? "no row" : "choose";
  if (value.is === "one of") return offered(value.options, blank);
  return value.is === "yes or no" ? offered(["yes", "no"], blank) : undefined;
}

/** What will stand, where it is said otherwise than it was typed. */
function echoOf({ value, mayBeBlank }: LeafSpec, read: unknown): string {
  if (read === undefined) return mayBeBlank && !("atLeast" in value) ? "no row" : "";
  if (value.is === "length") return printBoth(read as Length, "mm", "in");
  return Array.isArray(read) && value.is !== "list of words" ? read.join(", ") : "";
}

/** The field of one place of a row; undefined is blank. Whether a blank place has to be filled hangs on the row round it. */
export function leafField(leaf: LeafSpec): FieldSpec<unknown> {
  const { label, text, value } = leaf;
  const hint = hintOf(value);
  const choices = choicesOf(leaf);
  return {
    label,
    initial: text,
    ...(hint && { hint }),
    ...(choices && { choices }),
    long: value.is === "list of words" || (value.is === "words" && text.length > LONG),
    read: (typed) => (isBlank(typed) ? parsed(undefined) : readLeaf(value, typed)),
    echo: (read) => echoOf(leaf, read),
  };
}
