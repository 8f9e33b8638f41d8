import { type Day, daysBetween } from "#shared/day/day.ts";
import { type Chain, chainOf, type Pair } from "#shared/fit/chain.ts";
import type { Coaxial } from "#shared/fit/coaxial.ts";
import type { StateConcern, TubeInside } from "#shared/fit/inside.ts";
import type { BySize, ByState, PassageRows } from "#shared/fit/passage.ts";
import { dilatorsBetween, type UpsizeStep, upsizeStep } from "#shared/fit/upsize-step.ts";
import { type OneOfOurs, whichPass } from "#shared/fit/which-pass.ts";
import { type WireLength, wireLength } from "#shared/fit/wire-length.ts";
import { passageByState } from "#shared/fit/wire-passage.ts";
import type { BleedingRow } from "#shared/protocol/bleeding-rows.ts";
import type { PlanDoubt, PlanningRows } from "#shared/protocol/planning-rows.ts";
import type { Protocol } from "#shared/protocol/protocol.ts";
import { type Maturity, maturity, type TractAges } from "#shared/protocol/tract-ages.ts";
import { coaxialOf } from "#shared/shelf/coaxial-of.ts";
import type { ShelfType } from "#shared/shelf/shelf-type.ts";
import { lengthOf } from "#shared/size/exact-length.ts";
import type { Length } from "#shared/size/length.ts";
import { type Fact, known } from "#shared/tube/certainty.ts";
import type { TubeKind } from "#shared/tube/kind/kinds.ts";
import type { Retention } from "#shared/tube/vocabulary.ts";

/** What is planned. The stiffener lies in the tube to come and over the wire; the tube to come goes through the sheath. */
export type ExchangePlan = {
  /** Null while no day is set: then what hangs on the day is told of today. */
  readonly on: Day | null;
  /** Of the tube to come. */
  readonly kind: TubeKind;
  readonly wire: Coaxial;
  readonly toCome: Coaxial;
  readonly stiffener: Coaxial | null;
  readonly sheath: Coaxial | null;
};

/** The tube that is in, as it is recorded, and its tract. */
export type PlanTube = {
  readonly kind: TubeKind;
  readonly size: Fact<Length>;
  readonly inside: TubeInside;
  readonly concerns: readonly StateConcern[];
  readonly pastLatest: boolean;
  readonly fullLength: Fact<Length>;
  readonly externalLength: Fact<Length>;
  readonly retention: Fact<Retention>;
  /** The latest plausible day of the puncture; null where nobody can tell. */
  readonly tractSince: Day | null;
  readonly today: Day;
  /** Its row's ages; null where the table has no row for it. */
  readonly tractAges: TractAges | null;
};

/** The rows that a plan is held against. */
export type PlanRows = {
  readonly passage: PassageRows;
  readonly planning: PlanningRows | null;
  readonly bleeding: Protocol["bleeding"];
};

export type TractAnswer = {
  readonly maturity: Maturity;
  readonly age: number | null;
  readonly immatureUnder: number | null;
  /** Where access may be lost: both classes, for discussion. Empty of a mature tract and where there is no row. */
  readonly bleeding: readonly BleedingRow[];
  readonly asks: string | null;
};

export type Ready = {
  /** Tubes of the shelf by size, below and above the one to come, nearest first; sizes by the row where the shelf has none. */
  readonly below: { readonly size: Length | null; readonly types: readonly ShelfType[] };
  readonly above: { readonly size: Length | null; readonly types: readonly ShelfType[] };
  /** Of the shelf, each through the tube in place (0), the tube to come (1) and the stiffener, if any (2). */
  readonly wires: readonly OneOfOurs<Coaxial>[];
};

export type ExchangeAnswer = {
  /** The wire in the tube in place, by size and by state. */
  readonly throughOld: { readonly pair: Pair; readonly byState: ByState };
  /** Wire in the stiffener, if any, in the tube to come. */
  readonly throughNew: Chain;
  readonly length: WireLength;
  readonly step: UpsizeStep;
  readonly dilators: { readonly between: readonly ShelfType[]; readonly above: ShelfType | null } | null;
  readonly tract: TractAnswer;
  readonly throughSheath: Chain | null;
  readonly release: PlanningRows["release"][number] | "no row" | "retention unknown";
  readonly notOverWire: PlanningRows["notOverWire"][number] | null;
  readonly ready: Ready;
  /** What a row may ask a reason for, worst first. */
  readonly doubts: readonly PlanDoubt[];
};

/** As old as the tract is on the day of the plan. */
function tractAnswer(
  on: Day | null,
  { tractSince, tractAges, today }: PlanTube,
  { bleeding }: PlanRows,
): TractAnswer {
  const age = tractSince === null ? null : Math.max(0, daysBetween(tractSince, on ?? today));
  const says = tractAges === null ? "no row" : maturity(tractAges, age);
  const mayBeLost = says !== "mature";
  return {
    maturity: says,
    age,
    immatureUnder: tractAges?.immatureUnder ?? null,
    bleeding: mayBeLost ? (bleeding?.rows ?? []) : [],
    asks: mayBeLost ? (bleeding?.accessAtRisk ?? null) : null,
  };
}

function releaseOf({ retention }: PlanTube, planning: PlanningRows | null): ExchangeAnswer["release"] {
  const held = known(retention);
  if (held === undefined) return "retention unknown";
  return planning?.release.find(({ retentions }) => retentions.includes(held)) ?? "no row";
}

/** Tubes of the shelf that may stand in for the one to come: of its kind, or for any. */
const tubesFor = (shelf: readonly ShelfType[], kind: TubeKind): readonly ShelfType[] =>
  shelf.filter(({ sort, kinds }) => sort === "tube" && (kinds.length === 0 || kinds.includes(kind)));

/** The sizes next to the planned one: of the shelf where it has one on that side, else what the row says to keep ready. */
function beside(toCome: Fact<Length>, tubes: readonly ShelfType[], planning: PlanningRows | null) {
  const size = known(toCome);
  const row = planning?.readyF ?? null;
  const nearest = (side: -1 | 1): Ready["below"] => {
    if (size === undefined) return { size: null, types: [] };
    const away = ({ outside }: ShelfType): number => side * ((known(outside) ?? size) - size);
    const those = tubes.filter((type) => away(type) > 0);
    const least = Math.min(...those.map(away));
    if (those.length > 0)
      return { size: (size + side * least) as Length, types: those.filter((type) => away(type) === least) };
    const steps = row === null ? null : lengthOf(side < 0 ? row.below : row.above, "F");
    return { size: steps === null ? null : ((size + side * steps) as Length), types: [] };
  };
  return { below: nearest(-1), above: nearest(1) };
}

/** Of the shelf, for a step up between known sizes, whether or not a row speaks of the step; null where there is none. */
function dilatorsFor(inPlace: Fact<Length>, toCome: Fact<Length>, shelf: readonly ShelfType[]) {
  const [from, to] = [known(inPlace), known(toCome)];
  if (from === undefined || to === undefined || to <= from) return null;
  return dilatorsBetween(
    shelf.filter(({ sort }) => sort === "dilator"),
    { from, to },
  );
}

type Verdicts = Pick<
  ExchangeAnswer,
  "throughOld" | "throughNew" | "throughSheath" | "length" | "step" | "tract"
>;

function doubtsOf({ throughOld, throughNew, throughSheath, length, step, tract }: Verdicts): PlanDoubt[] {
  const sizes: readonly (BySize["verdict"] | undefined)[] = [
    throughOld.pair.bySize.verdict,
    throughNew.bySize?.verdict,
    throughSheath?.bySize?.verdict,
  ];
  const notTold =
    [...sizes, length.verdict, step.verdict, tract.maturity].includes("cannot tell") ||
    length.verdict === "external longer than full" ||
    tract.maturity === "no row";
  return [
    ...(sizes.includes("does not pass") ? (["does not pass"] as const) : []),
    ...(length.verdict === "too short" ? (["wire too short"] as const) : []),
    ...(step.verdict === "over the step with a note" ? (["step over the note"] as const) : []),
    ...(tract.maturity === "immature" ? (["immature tract"] as const) : []),
    ...(notTold ? (["cannot tell"] as const) : []),
    ...([...sizes, length.verdict].includes("doubt") ? (["doubt"] as const) : []),
  ];
}

/** The wire leaves through the tube in place and carries the tube to come, or a stiffener in it: each on its way. */
function passagesOf(
  { wire, toCome, stiffener, sheath }: ExchangePlan,
  tube: PlanTube,
  { passage }: PlanRows,
) {
  const inPlace: Coaxial = {
    sort: "tube",
    name: "the tube in place",
    outside: tube.size,
    tolerance: null,
    inside: tube.inside,
    length: tube.fullLength,
  };
  const [old] = chainOf([wire, inPlace], passage).pairs;
  if (old === undefined) throw new RangeError("a wire in a tube is a pair");
  const concerns = tube.pastLatest ? [...tube.concerns, "past latest date" as const] : tube.concerns;
  return {
    throughOld: { pair: old, byState: passageByState(concerns) },
    throughNew: chainOf(stiffener === null ? [wire, toCome] : [wire, stiffener, toCome], passage),
    throughSheath: sheath === null ? null : chainOf([toCome, sheath], passage),
  };
}

/**
 * A planned exchange held against the facts that are recorded, the clinic's rows and its shelf, in eight answers. It warns and never decides;
 * what is missing is named. `shelf` may be empty.
 */
export function exchangeAnswer(
  plan: ExchangePlan,
  tube: PlanTube,
  { rows, shelf }: { readonly rows: PlanRows; readonly shelf: readonly ShelfType[] },
): ExchangeAnswer {
  const { planning } = rows;
  const passages = passagesOf(plan, tube, rows);
  const devices = [plan.toCome, plan.stiffener, plan.sheath].flatMap((thing) => thing?.length ?? []);
  const length = wireLength({ ...tube, wire: plan.wire.length, devices, row: planning?.wire ?? null });
  const step = upsizeStep(tube.size, plan.toCome.outside, planning?.upsize ?? null);
  const tract = tractAnswer(plan.on, tube, rows);
  const wires = shelf.filter(({ sort }) => sort === "wire").map(coaxialOf);
  const around = [plan.toCome, ...(plan.stiffener === null ? [] : [plan.stiffener])];
  return {
    ...passages,
    length,
    step,
    dilators: dilatorsFor(tube.size, plan.toCome.outside, shelf),
    tract,
    release: releaseOf(tube, planning),
    notOverWire: planning?.notOverWire.find(({ kinds }) => kinds.includes(tube.kind)) ?? null,
    ready: {
      ...beside(plan.toCome.outside, tubesFor(shelf, plan.kind), planning),
      wires: whichPass(wires, [tube.inside, ...around.map(({ inside }) => inside)], rows.passage),
    },
    doubts: doubtsOf({ ...passages, length, step, tract }),
  };
}
