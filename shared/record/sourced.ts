import type { Fact } from "#shared/tube/certainty.ts";

/** What another place or the patient says is reported; an estimate stays one, an unknown is the same from anybody. */
export const sourced = <T>(fact: Fact<T>, toldByOthers: boolean): Fact<T> =>
  toldByOthers && fact.certainty === "confirmed" ? { certainty: "reported", value: fact.value } : fact;
