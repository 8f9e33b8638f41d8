import type { Coaxial } from "#shared/fit/coaxial.ts";
import { exchangeAnswer } from "#shared/fit/exchange-plan.ts";
import { whichPass } from "#shared/fit/which-pass.ts";
import type { Length } from "#shared/size/length.ts";
import { confirmed } from "#shared/tube/certainty.ts";
import type { Figure } from "#tests/bench/figure.ts";
import { byTurns, median } from "#tests/bench/sample.ts";
import { coaxial } from "#tests/factories/coaxial.ts";
import { exchangePlan, planRows, planTube } from "#tests/factories/planned-exchange.ts";
import { bore, bores, inch } from "#tests/factories/tube-inside.ts";

const TYPES = 2000;
const PLANS = 1000;
const TURNS = 60;

/** Wires from 0.010 to 0.050 in, each of a size of its own: what passes, what is in doubt and what does not. */
const wires: readonly Coaxial[] = Array.from({ length: TYPES }, (_, index) =>
  coaxial("wire", { name: `wire ${index}`, outside: (inch(0.01) + 762 * index) as Length }),
);

const insides = [
  bores(bore("hub", 0.079), bore("shaft", 0.075), bore("end hole", 0.038, null)),
  bores(bore("shaft", 0.091), bore("end hole", 0.041, 0.001)),
];

/** The comparisons alone, over plain numbers and in the same order. */
function comparisons(): number {
  let passing = 0;
  for (const { outside } of wires)
    for (const inside of insides)
      for (const { inside: size } of inside.bores)
        if (outside.certainty !== "unknown" && size.certainty !== "unknown" && outside.value <= size.value)
          passing += 1;
  return passing;
}

/** A planned exchange by itself, and which of 2,000 wires pass two tubes. */
export function fitFigures(): readonly Figure[] {
  const plan = exchangePlan();
  const tube = planTube({ inside: insides[0] ?? bores(), size: confirmed(inch(0.105)) });
  const planned = byTurns(
    TURNS,
    () => {
      for (let done = 0; done < PLANS; done += 1) exchangeAnswer(plan, tube, { rows: planRows, shelf: [] });
    },
    () => {
      for (let done = 0; done < PLANS; done += 1) structuredClone(plan);
    },
  );
  const ours = byTurns(
    TURNS,
    () => {
      whichPass(wires, insides, planRows.passage);
    },
    () => {
      comparisons();
    },
  );
  const usEach = (ms: number): number => (ms * 1000) / PLANS;
  return [
    {
      what: "a planned exchange",
      value: usEach(median(planned.ours)),
      unit: "us",
      floor: { is: "a copy of the plan", value: usEach(median(planned.floor)) },
      aim: { kind: "at most", value: 50 },
    },
    {
      what: `which of ours pass, ${TYPES.toLocaleString("en-US")} types through two tubes`,
      value: median(ours.ours),
      unit: "ms",
      floor: { is: "the comparisons alone", value: median(ours.floor) },
      aim: { kind: "at most", value: 20 },
    },
  ];
}
