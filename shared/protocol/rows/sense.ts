import type { Refusal } from "#shared/errors/refusal.ts";
import type { Protocol } from "#shared/protocol/protocol.ts";
import { addressOf, nameField } from "#shared/protocol/rows/address.ts";
import { callSense } from "#shared/protocol/rows/call-sense.ts";
import { intervalSense } from "#shared/protocol/rows/interval-sense.ts";
import type { RowData } from "#shared/protocol/rows/leaves.ts";
import type { Nonsense } from "#shared/protocol/rows/nonsense.ts";
import { addressAt, standingRows } from "#shared/protocol/rows/place-row.ts";
import { type RowSort, rowSorts } from "#shared/protocol/rows/row-sorts.ts";
import { rowCalled } from "#shared/words/protocol/row-names.ts";

type Standing = { readonly row: RowData; readonly address: string; readonly called: string };

const isData = (value: unknown): value is RowData => typeof value === "object" && value !== null;

/** Wherever figures go from one to another, at any depth of a row; places of lists count from 1. */
function reversedIn(part: RowData, prefix: string): readonly Refusal[] {
  const inside = Object.entries(part).flatMap(([name, value]): readonly Refusal[] => {
    const key = Array.isArray(part) ? String(Number(name) + 1) : name;
    return isData(value) ? reversedIn(value, `${prefix}${key}.`) : [];
  });
  const { from, to } = part;
  if (typeof from !== "number" || typeof to !== "number" || from <= to) return inside;
  return [...inside, { code: "figures-reversed", field: `${prefix}to`, args: { from, to } }];
}

type Key = { readonly key: string; readonly field: string };

const listIn = (row: RowData, name: string): readonly string[] => {
  const list = row[name];
  return Array.isArray(list) ? list.map(String) : [];
};

/** What tells apart two rows for the same: whether the tube is wholly out, or what is done with it. */
function besideKind(row: RowData): readonly string[] {
  const acts = listIn(row, "acts");
  if (acts.length > 0) return acts.map((act) => `, ${act}`);
  return [typeof row.out === "string" ? `, ${row.out}` : ""];
}

/** Of what is settled before a visit, and of what is asked in a call, every row counts, however many speak of one tube. */
const allCount = (row: RowData): boolean => "thing" in row || "opensOn" in row;

/** What a row of a list answers for. Where two do for the same, only the first would ever be found. */
function keysOf(row: RowData): readonly Key[] {
  const own = nameField(Object.keys(row));
  const beside = besideKind(row);
  const lists = allCount(row) ? [] : ["kinds", "retentions"];
  const listed = lists.flatMap((field) =>
    listIn(row, field).flatMap((key) => beside.map((state) => ({ key: `${key}${state}`, field }))),
  );
  return own === undefined ? listed : [{ key: String(row[own]), field: own }, ...listed];
}

function twice(rows: readonly Standing[]): readonly Nonsense[] {
  const keys = rows.map(({ row }) => keysOf(row));
  return rows.flatMap(({ address }, at) =>
    (keys[at] ?? []).flatMap(({ key, field }): readonly Nonsense[] => {
      const same = rows.find((_, other) => other !== at && keys[other]?.some((each) => each.key === key));
      if (same === undefined) return [];
      return [{ address, refusal: { code: "row-twice", field, args: { text: key, row: same.called } } }];
    }),
  );
}

function listSense(protocol: Protocol, sort: RowSort): readonly Nonsense[] {
  const rows = standingRows(protocol, sort).map((row, place) => ({
    row,
    address: addressAt(sort, row, place),
    called: rowCalled(sort.path, sort.isList, row),
  }));
  const reversed = rows.flatMap(({ row, address }) =>
    reversedIn(row, "").map((refusal) => ({ address, refusal })),
  );
  return sort.isList ? [...reversed, ...twice(rows)] : reversed;
}

function plateauSense({ outputRows }: Protocol): readonly Nonsense[] {
  const row = outputRows?.plateau ?? null;
  if (row === null || row.days <= row.ofLast) return [];
  const args = { days: row.days, limit: row.ofLast };
  return [{ address: "outputRows.plateau", refusal: { code: "plateau-over-its-days", field: "days", args } }];
}

/** Where a second tube took longer than one alone, two visits would be the shorter. */
function furtherSense({ planning }: Protocol): readonly Nonsense[] {
  return (planning?.room ?? []).flatMap(({ minutes, further }, at): readonly Nonsense[] =>
    further === null || further <= minutes
      ? []
      : [
          {
            address: addressOf("planning.room", at + 1),
            refusal: { code: "further-over-first", field: "further", args: { further, minutes } },
          },
        ],
  );
}

/** An entry raises one flag: the first that names it. */
function raisedTwice({ redFlags }: Protocol): readonly Nonsense[] {
  const raisers = redFlags.flatMap((flag) =>
    flag.raisedBy.map(({ trouble, grave }, at) => ({ flag, at, by: grave ? `${trouble}, grave` : trouble })),
  );
  return raisers.flatMap((one): readonly Nonsense[] => {
    const other = raisers.find((each) => each !== one && each.by === one.by);
    if (other === undefined) return [];
    const field = `raisedBy.${one.at + 1}.trouble`;
    const args = { text: one.by, row: rowCalled("redFlags", true, other.flag) };
    return [{ address: `redFlags/${one.flag.id}`, refusal: { code: "row-twice", field, args } }];
  });
}

function classTwice({ bleeding }: Protocol): readonly Nonsense[] {
  const classes = bleeding?.rows.map((row) => row.class) ?? [];
  return classes.flatMap((text, at): readonly Nonsense[] =>
    classes.indexOf(text) === at
      ? []
      : [
          {
            address: "bleeding",
            refusal: { code: "row-says-twice", field: `rows.${at + 1}.class`, args: { text } },
          },
        ],
  );
}

const says = ({ address, refusal }: Nonsense): string => JSON.stringify([address, refusal]);

/**
 * Everything that speaks against the rows of a version though their schema takes them, at the row and the leaf that it speaks against; what
 * two rows at one address say of one another once.
 */
export function senseOf(protocol: Protocol): readonly Nonsense[] {
  const all = [
    ...intervalSense(protocol),
    ...rowSorts.flatMap((sort) => listSense(protocol, sort)),
    ...plateauSense(protocol),
    ...furtherSense(protocol),
    ...callSense(protocol),
    ...raisedTwice(protocol),
    ...classTwice(protocol),
  ];
  return [...new Map(all.map((each) => [says(each), each])).values()];
}

/** What speaks against a version and did not speak against another. */
export function newNonsense(was: Protocol, is: Protocol): readonly Nonsense[] {
  const before = new Set(senseOf(was).map(says));
  return senseOf(is).filter((each) => !before.has(says(each)));
}
