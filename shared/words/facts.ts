import { printBoth, printLength } from "#shared/size/print-length.ts";
import type { Fact } from "#shared/tube/certainty.ts";
import type { TubeFacts } from "#shared/tube/facts.ts";

/** How a fact is told: `marked` says behind it that it is reported, `plain` leaves that to the sentence round it. */
export type Telling = "marked" | "plain";

/** "8 F", "about 8 F", "8 F (reported)"; an unknown one is told by what it is: "size unknown". */
export function toldFact<T>(
  fact: Fact<T>,
  { what, print, telling }: { what: string; print: (value: T) => string; telling: Telling },
): string {
  switch (fact.certainty) {
    case "unknown":
      return `${what} unknown`;
    case "confirmed":
      return print(fact.value);
    case "estimated":
      return `about ${print(fact.value)}`;
    case "reported":
      return telling === "marked" ? `${print(fact.value)} (reported)` : print(fact.value);
  }
}

/** Every fact that was spoken of, in the order in which a tube is described; an unknown one only where it was said on its own. */
export function factPhrases(facts: TubeFacts, telling: Telling, unknowns: "told" | "left out"): string[] {
  const phrases: string[] = [];
  const tell = <T>(fact: Fact<T> | undefined, what: string, print: (value: T) => string): void => {
    if (fact === undefined || (fact.certainty === "unknown" && unknowns === "left out")) return;
    phrases.push(toldFact(fact, { what, print, telling }));
  };
  if (facts.size !== undefined)
    phrases.push(toldFact(facts.size, { what: "size", print: (size) => printLength(size, "F"), telling }));
  tell(facts.takes, "what wire it takes", (wire) => `takes ${printLength(wire, "in")}`);
  for (const { place, inside } of facts.bores ?? [])
    tell(inside, `inside of the ${place}`, (bore) => `${place} ${printBoth(bore, "mm", "in")} inside`);
  tell(facts.endHole, "end hole", (state) => `end hole ${state}`);
  tell(facts.retention, "what holds it", (retention) => `held by ${retention}`);
  tell(facts.balloonMl, "water in the balloon", (ml) => `${ml} mL in the balloon`);
  tell(facts.fullLength, "full length", (length) => `${printLength(length, "cm")} long`);
  tell(facts.externalLength, "external length", (length) => `${printLength(length, "cm")} outside`);
  tell(facts.fixation, "fixation", (words) => `fixed by ${words}`);
  tell(facts.flushOrder, "flush order", (words) => `flush ordered: ${words}`);
  if (facts.expectedFluid !== undefined)
    phrases.push(`expected fluid: ${facts.expectedFluid.join(", ") || "none"}`);
  return phrases;
}
