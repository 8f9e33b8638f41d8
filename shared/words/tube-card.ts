import type { Day } from "#shared/day/day.ts";
import { printDay, printWhen } from "#shared/day/print-day.ts";
import { tubeOutRow } from "#shared/protocol/find-tube-out.ts";
import type { Protocol } from "#shared/protocol/protocol.ts";
import { printLength } from "#shared/size/print-length.ts";
import type { OpenStep } from "#shared/step/step.ts";
import type { Fact } from "#shared/tube/certainty.ts";
import { isFirstCatheter } from "#shared/tube/clocks.ts";
import { hasBalloon } from "#shared/tube/has-balloon.ts";
import { kindOf } from "#shared/tube/kind/kinds.ts";
import type { TubeState } from "#shared/tube/state.ts";
import type { StepKind } from "#shared/tube/step-kinds.ts";
import { toldFact } from "#shared/words/facts.ts";
import { stepNames } from "#shared/words/steps.ts";

/** One line of the card: its word and what it says. */
export type CardLine = { readonly word: string; readonly says: string };

export type CardOf = {
  readonly tube: TubeState;
  /** The tube's open steps, the next first. */
  readonly steps: readonly OpenStep[];
  readonly today: Day;
};

const told = <T>(fact: Fact<T>, print: (value: T) => string): string =>
  fact.certainty === "unknown" ? "unknown" : toldFact(fact, { what: "", print, telling: "marked" });

function heldBy(tube: TubeState): CardLine {
  const retention = told(tube.retention, (held) => held);
  const water = hasBalloon(tube) ? [`water ${told(tube.balloonMl, (ml) => `${ml} mL`)}`] : [];
  return { word: "Held by", says: [retention, ...water].join(", ") };
}

const exchanges: readonly string[] = ["exchanged", "upsized", "downsized"];

/** Since when the catheter lies there; of one that is not the first also since when there is a tract. */
function sinceWhen(tube: TubeState): readonly CardLine[] {
  const { catheter, tract, unverified, story } = tube;
  if (isFirstCatheter(tube)) return [{ word: "Placed on", says: printWhen(tract.since) }];
  const start = story.find(({ eventId }) => eventId === catheter.eventId)?.kind;
  const isExchange = start !== undefined && exchanges.includes(start);
  const unsure = unverified?.eventId === catheter.eventId ? ", reported and not confirmed" : "";
  return [
    { word: "First placed on", says: printWhen(tract.since) },
    {
      word: isExchange ? "Last exchanged on" : "In place since",
      says: `${printWhen(catheter.since)}${unsure}`,
    },
  ];
}

/** Steps whose latest day is how long the tube itself may stay as it is; that of a call is not. */
const ofTheTube: readonly StepKind[] = ["exchange", "remove or exchange", "remove", "review"];

/** The latest day of the next step that has one. */
function byWhen({ steps, today }: CardOf): CardLine {
  for (const { kind, latest, provisional } of steps) {
    if (latest === null || !ofTheTube.includes(kind)) continue;
    const unsure = provisional ? ", provisional" : "";
    const past = latest < today ? " (passed: call the clinic)" : "";
    return { word: `${stepNames[kind]} by`, says: `${printDay(latest)}${unsure}${past}` };
  }
  return { word: "Out or exchanged by", says: "not known, ask the clinic" };
}

/** What the tube is and by when something is due: the side of the card with the name on it. */
export const cardFront = (of: CardOf): readonly CardLine[] => [
  { word: "Size", says: told(of.tube.size, (size) => printLength(size, "F")) },
  heldBy(of.tube),
  ...sinceWhen(of.tube),
  byWhen(of),
];

/** What holds until somebody is reached, by the clinic's rows of a tube that is out. An internal tube has no part that could come out. */
export function cardIfOut(protocol: Pick<Protocol, "tubeOut">, { kind }: TubeState): readonly CardLine[] {
  if (!kindOf(kind).outside) return [{ word: "It lies wholly inside", says: "no part of it shows." }];
  const lines = (
    [
      ["out", "If it comes out"],
      ["part out", "If part of it comes out"],
    ] as const
  ).flatMap(([out, word]) => {
    const row = tubeOutRow(protocol, kind, out);
    if (row === undefined) return [];
    // What is done at every age of the tract is said; what hangs on the age is the clinic's to say.
    const act = row.immature === row.mature ? row.mature : "call the clinic";
    return [{ word, says: `${act}. Until you reach someone: ${row.untilReached}.` }];
  });
  const wholly = lines.some(({ word }) => word === "If it comes out");
  return wholly
    ? lines
    : [{ word: "If it comes out", says: "the clinic's list has no line, so call the clinic." }, ...lines];
}
