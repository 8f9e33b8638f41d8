import { endWays, type FigureName, type Figures, reachWays } from "#shared/call/figures.ts";
import { kindOf } from "#shared/tube/kind/kinds.ts";

/** One figure: in which table it stands, its word, and what opens the list behind it. */
export type FigureLine = {
  readonly table: "In place" | "Reached" | "Red flags" | "Records ended";
  readonly word: string;
  /** Null: nobody can tell. */
  readonly count: number | null;
  readonly unit: string;
  /** How many there are in all, where the count is a part of them. */
  readonly of: number | null;
  readonly opens: FigureName | "undated" | "past-latest" | { readonly kind: string } | null;
};

type Of = Figures & { readonly undated: number; readonly pastLatest: number };

const reachWords = {
  "first attempt": "Reached at the first attempt",
  "second attempt": "at the second",
  "third attempt": "at the third",
  later: "later",
  "another way": "Reached another way",
  "not reached": "Not reached: a physician decided",
} as const satisfies Record<(typeof reachWays)[number], string>;

const endWords = {
  removed: "Removed",
  "not replaced": "Out and not replaced",
  converted: "Converted",
  "accepted elsewhere": "Accepted elsewhere",
  died: "Died with the tube",
  "follow-up ended": "A clinician ended the follow-up",
} as const satisfies Record<(typeof endWays)[number], string>;

const sum = (counts: Readonly<Record<string, number>>): number =>
  Object.values(counts).reduce((all, count) => all + count, 0);

const toTenth = (hours: number | null): number | null =>
  hours === null ? null : Math.round(hours * 10) / 10;

/** Every figure in the order in which it is read. */
export function figureLines(of: Of): readonly FigureLine[] {
  const { flags } = of;
  const tubes = { table: "In place", unit: "tubes", of: of.open } as const;
  const reached = { table: "Reached", unit: "calls", of: sum(of.reached) } as const;
  const flagged = { table: "Red flags", opens: "red flags", of: null } as const;
  const ended = { table: "Records ended", unit: "records", of: sum(of.ended) } as const;
  return [
    ...of.inPlace.map(({ kind, tubes: count }) => ({
      ...tubes,
      word: kindOf(kind).name,
      count,
      opens: { kind },
    })),
    { ...tubes, word: "Without a date", count: of.undated, opens: "undated" },
    { ...tubes, word: "Past latest", count: of.pastLatest, opens: "past-latest" },
    ...reachWays.map((way) => ({
      ...reached,
      word: reachWords[way],
      count: of.reached[way],
      opens: `reached ${way}` as const,
    })),
    {
      ...reached,
      unit: "patients",
      of: of.patients,
      word: "Tried now and not reached yet",
      count: of.trying,
      opens: "trying",
    },
    {
      ...reached,
      unit: "patients",
      of: null,
      word: "Patients with an open record",
      count: of.patients,
      opens: null,
    },
    { ...flagged, unit: "flags", word: "Raised", count: flags.raised },
    { ...flagged, unit: "flags", of: flags.raised, word: "Handed to nobody yet", count: flags.unhanded },
    {
      ...flagged,
      unit: "flags",
      of: flags.raised,
      word: "Handed, what was done is not recorded",
      count: flags.undone,
    },
    {
      ...flagged,
      unit: "hours",
      word: "Told to handed, the middle one",
      count: toTenth(flags.toHanded.median),
    },
    { ...flagged, unit: "hours", word: "Told to handed, the longest", count: toTenth(flags.toHanded.most) },
    { ...flagged, unit: "hours", word: "Told to done, the middle one", count: toTenth(flags.toDone.median) },
    { ...flagged, unit: "hours", word: "Told to done, the longest", count: toTenth(flags.toDone.most) },
    ...endWays.map((way) => ({
      ...ended,
      word: endWords[way],
      count: of.ended[way],
      opens: `ended ${way}` as const,
    })),
  ];
}

/** "Reached at the first attempt": what a list behind a figure is called. */
export function figureWords(name: FigureName): string {
  if (name === "trying") return "Tried now and not reached yet";
  if (name === "red flags") return "Red flags";
  const way = name.slice(name.indexOf(" ") + 1);
  return name.startsWith("ended")
    ? endWords[way as keyof typeof endWords]
    : reachWords[way as keyof typeof reachWords];
}

/** "3.5 % of 340": what part of all a count is. Null where it is a part of nothing. */
export function shareWords({ count, of }: Pick<FigureLine, "count" | "of">): string | null {
  if (count === null || of === null || of === 0) return null;
  return `${toTenth((count / of) * 100)} % of ${of}`;
}

const many = (count: number, one: string): string => `${count} ${one}${count === 1 ? "" : "s"}`;

/** "113 tubes": what a table counts in all. */
export function tableCount(table: FigureLine["table"], { open, reached, flags, ended }: Figures): string {
  switch (table) {
    case "In place":
      return many(open, "tube");
    case "Reached":
      return `${many(sum(reached), "call")} that came to an end`;
    case "Red flags":
      return `${flags.raised} raised`;
    case "Records ended":
      return many(sum(ended), "record");
  }
}
