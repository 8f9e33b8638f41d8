import { kindOf, type TubeKind } from "#shared/tube/kind/kinds.ts";
import { mayLieIn } from "#shared/tube/may-lie-in.ts";
import type { TubeState } from "#shared/tube/state.ts";

/** A tube whose output is read beside another's. Not certain: nobody wrote down where the collection lies, and it may be bile. */
export type Beside = { readonly tube: TubeState; readonly certain: boolean };

const drainsBile = (kind: TubeKind): boolean => ["bile", "gallbladder"].includes(kindOf(kind).output ?? "");

/** "Biloma", "bile leak", "biliary": what people write of a collection that bile feeds. */
const speaksOfBile = (words: string | null): boolean => /\bbil(e|i|o)/i.test(words ?? "");

function collectsBile(tube: TubeState): "yes" | "not known" | "no" {
  if (tube.role !== "collection") return "no";
  if (tube.expectedFluid.includes("bilious") || speaksOfBile(tube.cavity) || speaksOfBile(tube.indication))
    return "yes";
  return (tube.cavity ?? "").trim() === "" ? "not known" : "no";
}

/**
 * A drain in a collection of bile and a drain of the bile ducts or the gallbladder, both in: what the one gains the other may lose, and low
 * means opposite things. Of either, the tubes of the other sort in order of their numbers.
 */
export function bileBeside(tube: TubeState, others: readonly TubeState[]): readonly Beside[] {
  const inPlace = others.filter((other) => other.id !== tube.id && mayLieIn(other));
  if (drainsBile(tube.kind))
    return inPlace.flatMap((other) => {
      const collects = collectsBile(other);
      return collects === "no" ? [] : [{ tube: other, certain: collects === "yes" }];
    });
  const collects = collectsBile(tube);
  if (collects === "no") return [];
  return inPlace
    .filter(({ kind }) => drainsBile(kind))
    .map((other) => ({ tube: other, certain: collects === "yes" }));
}
