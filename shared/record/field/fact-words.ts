import type { Fact } from "#shared/tube/certainty.ts";

/** A fact as its field echoes it: "8 F", "about 8 F", "unknown"; nothing where nothing was said. */
export function factWords<T>(fact: Fact<T> | undefined, print: (value: T) => string): string {
  if (fact === undefined) return "";
  if (fact.certainty === "unknown") return "unknown";
  return fact.certainty === "estimated" ? `about ${print(fact.value)}` : print(fact.value);
}
