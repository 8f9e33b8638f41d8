import { shutModes } from "#shared/output/low-day.ts";
import { mayLieIn } from "#shared/tube/may-lie-in.ts";
import type { TubeState } from "#shared/tube/state.ts";

/** A blank more or less makes no other cavity: two drains of one would each be judged by its own share. */
const plain = (cavity: string | null): string => (cavity ?? "").toLowerCase().replace(/\s/g, "");

export type Cavity = {
  /** Tubes that drain the cavity now, the tube asked for first: the criterion looks at their sum. */
  readonly draining: readonly TubeState[];
  /** In it and set to let nothing out. */
  readonly shut: readonly TubeState[];
  /** Every other tube that is or was in it: what changed on one changes what runs from the rest. */
  readonly mates: readonly TubeState[];
  /** Other tubes that drain a collection, where nobody wrote down of one of the two in which cavity it lies: they may be in this one. */
  readonly maybe: readonly TubeState[];
};

/** Tubes of one cavity: the same words for it, the same patient. */
export function cavityOf(tube: TubeState, tubes: readonly TubeState[]): Cavity {
  const name = plain(tube.cavity);
  const others = tubes.filter(({ id, role }) => id !== tube.id && role === "collection");
  const mates = others.filter(({ cavity }) => name !== "" && plain(cavity) === name);
  const inside = mates.filter(mayLieIn);
  const isShut = ({ mode }: TubeState): boolean => shutModes.includes(mode);
  return {
    draining: [tube, ...inside.filter((mate) => !isShut(mate))],
    shut: inside.filter(isShut),
    mates,
    maybe: others.filter((other) => mayLieIn(other) && (name === "" || plain(other.cavity) === "")),
  };
}
