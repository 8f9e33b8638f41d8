import { type Coaxial, goesAs } from "#shared/fit/coaxial.ts";
import type { TubeInside } from "#shared/fit/inside.ts";
import { passageBySize } from "#shared/fit/pass-by-size.ts";
import type { BySize, PassageRows } from "#shared/fit/passage.ts";
import type { Length } from "#shared/size/length.ts";
import type { Fact } from "#shared/tube/certainty.ts";

/** What is asked of a type: its outside, and what it is called. */
export type Ours = Pick<Coaxial, "sort" | "name" | "outside" | "tolerance">;

/** One type against everything that it is to go through: the worst answer, and which of the things gave it. */
export type OneOfOurs<T extends Ours> = {
  readonly type: T;
  readonly verdict: BySize["verdict"];
  /** Index of the thing that decides, and what it says. */
  readonly through: number;
  readonly bySize: BySize;
};

const order: readonly BySize["verdict"][] = ["passes", "doubt", "cannot tell", "does not pass"];

const sizeOf = (outside: Fact<Length>): number => (outside.certainty === "unknown" ? -1 : outside.value);

/**
 * Which of ours pass: each type through each of the insides, the worst of them shown. In order of the verdict, what passes first,
 * then thickest first, then by name. No answer where there is nothing to go through.
 */
export function whichPass<T extends Ours>(
  types: readonly T[],
  insides: readonly TubeInside[],
  rows: PassageRows,
): readonly OneOfOurs<T>[] {
  const answers = types.flatMap((type): OneOfOurs<T>[] => {
    const each = insides.map((inside) => passageBySize({ goes: goesAs(type), inside, rows }));
    const rank = (bySize: BySize): number => order.indexOf(bySize.verdict);
    const worst = each.reduce((at, bySize, index) => {
      const stood = each[at];
      return stood === undefined || rank(bySize) > rank(stood) ? index : at;
    }, 0);
    const bySize = each[worst];
    return bySize === undefined ? [] : [{ type, verdict: bySize.verdict, through: worst, bySize }];
  });
  return answers.toSorted(
    (a, b) =>
      order.indexOf(a.verdict) - order.indexOf(b.verdict) ||
      sizeOf(b.type.outside) - sizeOf(a.type.outside) ||
      (a.type.name < b.type.name ? -1 : a.type.name > b.type.name ? 1 : 0),
  );
}

export const namesThatPass = (ours: readonly OneOfOurs<Ours>[]): readonly string[] =>
  ours.filter(({ verdict }) => verdict === "passes").map(({ type }) => type.name);
