import type { Draw } from "#seed-demo/seeded.ts";
import { addDays, type Day } from "#shared/day/day.ts";
import * as make from "#tests/support/factories.ts";

/** One tube to tell of: its place in its patient, and the day up to which it is told. */
export type Tube = {
  readonly draw: Draw;
  readonly today: Day;
  readonly tube: string;
  readonly number: number;
  readonly side: "left" | "right";
};

/** What happened to a tube, and whether it is still in. */
export type Life = { readonly entries: readonly make.Entry[]; readonly staysIn: boolean };

/** Nine of ten are called and reached on the first or second day after the catheter's clock began. */
function callAfter({ draw, today, tube }: Tube, start: Day): make.Entry[] {
  const on = addDays(start, draw.between(1, 2));
  return on <= today && draw.percent(90) ? [make.called({ on, tube })] : [];
}

/** One in twelve has its next exchange planned within two weeks. */
function planOf({ draw, today, tube }: Tube): make.Entry[] {
  if (!draw.percent(8)) return [];
  const planned = addDays(today, draw.between(0, 14));
  return [make.exchangePlanned({ on: addDays(today, -draw.between(0, 9)), tube, planned })];
}

/** Exchanged about every eleven weeks; one in twenty is found late, up to two months after its latest date. */
function exchanges(of: Tube, start: Day): make.Entry[] {
  const { draw, today, tube } = of;
  const on = addDays(start, draw.percent(5) ? draw.between(91, 150) : draw.between(66, 88));
  if (on > today) return [];
  const checked = draw.percent(30) ? [make.checked({ on, at: "09:30", tube })] : [];
  const renewed = make.exchanged({ on, tube, size: draw.from([make.F(8), make.F(10)]) });
  return [...checked, renewed, ...callAfter(of, on), ...exchanges(of, on)];
}

/** Placed here up to fourteen months ago, or taken over with a month, or no date at all, for its exchange. */
export function nephrostomy(of: Tube): Life {
  const { draw, today, tube, number, side } = of;
  const opening = {
    kind: "nephrostomy",
    tube,
    number,
    side,
    size: draw.from([make.F(8), make.F(10)]),
  } as const;
  if (draw.percent(12)) {
    const recordedOn = addDays(today, -draw.between(0, 40));
    const on = draw.percent(70) ? addDays(recordedOn, -draw.between(30, 90)).slice(0, 7) : "?";
    return { entries: [make.takenOver({ ...opening, on, recordedOn }), ...planOf(of)], staysIn: true };
  }
  const on = addDays(today, -draw.between(0, 420));
  const entries = [
    make.placed({ ...opening, on }),
    ...callAfter(of, on),
    ...exchanges(of, on),
    ...planOf(of),
  ];
  return { entries, staysIn: true };
}

/** In for weeks: checked after one, upsized now and then; most that are older than three weeks are out. */
export function abscessDrain(of: Tube): Life {
  const { draw, today, tube, number, side } = of;
  const age = draw.between(0, 70);
  const on = addDays(today, -age);
  const opening = make.placed({ kind: "abscess drain", tube, number, side, on, size: make.F(10) });
  const checked = age > 7 ? [make.checked({ on: addDays(on, 7), tube })] : [];
  const upsized =
    age > 12 && draw.percent(20) ? [make.upsized({ on: addDays(on, 12), tube, size: make.F(12) })] : [];
  const isOut = age > 21 && draw.percent(70);
  const removed = isOut ? [make.removed({ on: addDays(on, draw.between(15, 21)), tube })] : [];
  return {
    entries: [opening, ...callAfter(of, on), ...checked, ...upsized, ...removed],
    staysIn: !isOut,
  };
}

/** In by the operator's date, mostly; most are taken out round that date, the rest are the forgotten ones. */
export function ureteralStent(of: Tube): Life {
  const { draw, today, tube, number, side } = of;
  const on = addDays(today, -draw.between(0, 200));
  const by = addDays(on, draw.between(30, 90));
  const plan = draw.percent(96) ? ({ act: "remove", by } as const) : null;
  const placed = make.placed({ kind: "ureteral stent", tube, number, side, on, size: make.F(6), plan });
  const isOut = by < today && draw.percent(75);
  const removed = isOut ? [make.removed({ on: by, tube })] : [];
  return { entries: [placed, ...callAfter(of, on), ...removed], staysIn: !isOut };
}
