import { onWeekday } from "#seed-demo/days.ts";
import { type CastName, casts } from "#seed-demo/lives/casts.ts";
import { type Collection, collectionLife } from "#seed-demo/lives/collection-life.ts";
import type { Tube } from "#seed-demo/lives/course.ts";
import { exchangedLife, type Turns } from "#seed-demo/lives/exchanged-life.ts";
import type { Chance, Phase } from "#seed-demo/lives/phase.ts";
import { sessionLife } from "#seed-demo/lives/session-life.ts";
import { type Stent, stentLife } from "#seed-demo/lives/stent-life.ts";
import { type Act, act, call } from "#seed-demo/story.ts";

/** One patient's tubes as they are drawn: how many there are of each sort is fixed, the days are not. */
export type Casting = (chance: Chance) => readonly Act[];

const tubeOf = ({ draw }: Chance, name: CastName, side = draw.from(["left", "right"] as const)): Tube => ({
  word: side,
  cast: casts[name],
  side,
});

const exchanged =
  (name: CastName, phase: Phase, more: Omit<Turns, "phase">): Casting =>
  (chance) =>
    exchangedLife(chance, tubeOf(chance, name), { phase, ...more });

/** One on each side, out of step. */
const onBothSides =
  (name: CastName, left: Turns, right: Turns): Casting =>
  (chance) => [
    ...exchangedLife(chance, tubeOf(chance, name, "left"), left),
    ...exchangedLife(chance, tubeOf(chance, name, "right"), right),
  ];

const collection =
  (name: CastName, life: Collection): Casting =>
  (chance) =>
    collectionLife(chance, tubeOf(chance, name), life);

const session =
  (name: CastName, age: number, reviewed: number): Casting =>
  (chance) =>
    sessionLife(chance, tubeOf(chance, name), { age, reviewed });

const stent =
  (name: CastName, life: Stent): Casting =>
  (chance) =>
    stentLife(chance, tubeOf(chance, name), life);

/** A nephrostomy that became a stent three weeks ago: one record ends, the next opens. */
const converted: Casting = (chance) => {
  const { startDay } = chance;
  const tube = tubeOf(chance, "nephrostomy");
  const on = onWeekday(startDay, 21);
  const before = exchangedLife(chance, tube, { phase: "open", turns: 1 }).filter(
    ({ daysAgo }) => daysAgo > on,
  );
  const texts = { kind: "ureteral stent", size: "7 f", when: "today", plan: "remove by +70 Dr Hazelbarrow" };
  return [
    ...before,
    act(on, { form: "converted", tube: tube.word, opens: "stent", texts }),
    call(onWeekday(startDay, 17), "Knows that a stent is inside and when it comes out."),
  ];
};

const urinary: readonly Casting[] = [
  exchanged("nephrostomy", "young", { turns: 3, logged: 12 }),
  exchanged("nephrostomy", "young", { turns: 2, logged: 11 }),
  exchanged("nephrostomy", "young", { turns: 1 }),
  exchanged("nephrostomy", "open", { turns: 2 }),
  exchanged("nephrostomy", "due", { turns: 2 }),
  exchanged("nephrostomy", "late", { turns: 2 }),
  exchanged("nephrostomy", "fresh", { turns: 2 }),
  onBothSides("nephrostomy", { phase: "young", turns: 2 }, { phase: "open", turns: 2 }),
  onBothSides("nephrostomy", { phase: "due", turns: 2 }, { phase: "young", turns: 2 }),
  onBothSides("nephroureteral", { phase: "young", turns: 2 }, { phase: "young", turns: 2 }),
  exchanged("nephroureteral", "due", { turns: 2 }),
  onBothSides("conduit", { phase: "young", turns: 2 }, { phase: "young", turns: 2 }),
  exchanged("suprapubic", "young", { turns: 2, logged: 10 }),
  exchanged("suprapubic", "young", { turns: 2 }),
  exchanged("suprapubic", "due", { turns: 2 }),
  stent("stent", { age: 40, stays: 75 }),
  stent("stent", { age: 58, stays: 84 }),
  stent("stent", { age: 90, stays: 60, removed: true }),
  converted,
];

const biliary: readonly Casting[] = [
  exchanged("internalExternal", "young", { turns: 2, logged: 12 }),
  exchanged("internalExternal", "open", { turns: 2, logged: 10 }),
  onBothSides("internalExternal", { phase: "young", turns: 2 }, { phase: "young", turns: 2 }),
  exchanged("external", "due", { turns: 2 }),
  exchanged("external", "young", { turns: 2, logged: 11 }),
  exchanged("gallbladder", "young", { turns: 2 }),
  exchanged("gallbladder", "open", { turns: 1 }),
  stent("biliaryStent", { age: 45, stays: 100 }),
];

const feeding: readonly Casting[] = [
  exchanged("balloonGastrostomy", "young", { turns: 1 }),
  exchanged("balloonGastrostomy", "open", { turns: 1 }),
  exchanged("balloonGastrostomy", "young", { turns: 1 }),
  exchanged("loopGastrostomy", "young", { turns: 2 }),
  exchanged("loopGastrostomy", "due", { turns: 2 }),
  exchanged("bumperGastrostomy", "young", { turns: 1 }),
  exchanged("jejunostomy", "open", { turns: 2 }),
  exchanged("venting", "young", { turns: 2 }),
];

const drains: readonly Casting[] = [
  collection("abscess", { age: 19, reviewed: 6 }),
  collection("abscess", { age: 27, reviewed: 9 }),
  collection("abscess", { age: 22, reviewed: 14 }),
  collection("abscess", { age: 40, reviewed: 20, removed: 12 }),
  collection("abscess", { age: 62, reviewed: 38, removed: 30 }),
  collection("pancreatic", { age: 45, reviewed: 8 }),
  collection("lymphocele", { age: 24, reviewed: 4 }),
  session("pleural", 60, 12),
  session("peritoneal", 85, 27),
];

export const castings: readonly Casting[] = [...urinary, ...biliary, ...feeding, ...drains];
