import type { Draw } from "#seed-demo/seeded.ts";
import { addDays, type Day } from "#shared/day/day.ts";
import type { TubeKind } from "#shared/tube/kind/kinds.ts";

/** What happens to a simulated patient whatever the clinic does. */
export type Happening = { readonly on: Day } & (
  | { readonly what: "placed"; readonly kind: TubeKind; readonly side: "l" | "r" | "" }
  | {
      readonly what: "comes out" | "falls out" | "trial starts" | "is booked" | "drains";
      readonly number: number;
    }
  | { readonly what: "goes into hospital" | "comes home" | "dies" | "dies, by mistake" }
);

/** What happens to one tube of the patient. */
export type Numbered = Extract<Happening, { readonly number: number }>;

export type Year = { readonly from: Day; readonly days: number };

type Sort = {
  readonly kind: TubeKind;
  readonly sided: boolean;
  /** Days in place, from and to; null: it stays, and is exchanged. */
  readonly stays: readonly [number, number] | null;
  readonly trial: boolean;
};

const sorts: readonly Sort[] = [
  { kind: "nephrostomy", sided: true, stays: null, trial: true },
  { kind: "nephrostomy", sided: true, stays: [20, 200], trial: true },
  { kind: "abscess drain", sided: false, stays: [10, 45], trial: false },
  { kind: "ureteral stent", sided: true, stays: [30, 90], trial: false },
  { kind: "balloon gastrostomy", sided: false, stays: null, trial: false },
  { kind: "chest tube", sided: true, stays: [4, 20], trial: false },
  { kind: "external biliary drain", sided: true, stays: [30, 200], trial: true },
];

/** A diary of volumes every second day, which stops. */
const diary = (draw: Draw, on: Day, number: number): readonly Happening[] =>
  Array.from({ length: draw.between(1, 5) }, (_one, n) => ({
    on: addDays(on, 1 + 2 * n),
    what: "drains",
    number,
  }));

function ofTube(draw: Draw, on: Day, number: number): readonly Happening[] {
  const sort = draw.from(sorts);
  const side = sort.sided ? (number === 1 ? "l" : "r") : "";
  const after = (least: number, most: number): Day => addDays(on, draw.between(least, most));
  return [
    { on, what: "placed", kind: sort.kind, side },
    ...(sort.stays === null ? [] : [{ on: after(...sort.stays), what: "comes out", number } as const]),
    ...(draw.percent(6) ? [{ on: after(2, 150), what: "falls out", number } as const] : []),
    ...(sort.trial && draw.percent(25) ? [{ on: after(10, 60), what: "trial starts", number } as const] : []),
    ...(sort.stays === null && draw.percent(40)
      ? [{ on: after(10, 60), what: "is booked", number } as const]
      : []),
    ...(sort.kind === "abscess drain" && draw.percent(60) ? diary(draw, on, number) : []),
  ];
}

/** One or two tubes, the first on any day of the year; some patients go into a hospital, some die, one in fifty only by a slip of the pen. */
export function fateOf(draw: Draw, { from, days }: Year): readonly Happening[] {
  const first = addDays(from, draw.between(0, days - 1));
  const second = draw.percent(30) ? addDays(first, draw.from([0, draw.between(1, 60)])) : null;
  const inside = addDays(first, draw.between(5, 200));
  const all: readonly Happening[] = [
    ...ofTube(draw, first, 1),
    ...(second === null ? [] : ofTube(draw, second, 2)),
    ...(draw.percent(8)
      ? ([
          { on: inside, what: "goes into hospital" },
          { on: addDays(inside, draw.between(2, 20)), what: "comes home" },
        ] as const)
      : []),
    ...(draw.percent(5) ? [{ on: addDays(first, draw.between(3, 300)), what: "dies" } as const] : []),
    ...(draw.percent(2)
      ? [{ on: addDays(first, draw.between(3, 200)), what: "dies, by mistake" } as const]
      : []),
  ];
  return all.toSorted((a, b) => (a.on < b.on ? -1 : a.on > b.on ? 1 : 0));
}
