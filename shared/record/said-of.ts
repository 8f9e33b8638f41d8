import { sourced } from "#shared/record/sourced.ts";
import type { Fact } from "#shared/tube/certainty.ts";

type Facts = { readonly [name: string]: Fact<unknown> | undefined };

/** The facts that were spoken of, each by who spoke; what was left blank is left out. */
export function saidOf<T extends Facts>(typed: T, toldByOthers: boolean): T {
  const said = Object.entries(typed).flatMap(([name, fact]) =>
    fact === undefined ? [] : [[name, sourced(fact, toldByOthers)]],
  );
  return Object.fromEntries(said);
}
