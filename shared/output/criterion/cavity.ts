import { shutModes } from "#shared/output/low-day.ts";
import type { TubeState } from "#shared/tube/state.ts";

const plain = (cavity: string | null): string => (cavity ?? "").trim().toLowerCase().replace(/\s+/g, " ");

export type Cavity = {
  /** Tubes that drain the cavity now, the tube asked for first: the criterion looks at their sum. */
  readonly draining: readonly TubeState[];
  /** In it and set to let nothing out. */
  readonly shut: readonly TubeState[];
  /** Every other tube that is or was in it: what changed on one changes what runs from the rest. */
  readonly mates: readonly TubeState[];
};

/** Tubes of one cavity: the same words for it, the same patient. A tube without a cavity stands alone. */
export function cavityOf(tube: TubeState, tubes: readonly TubeState[]): Cavity {
  const name = plain(tube.cavity);
  const mates = tubes.filter(
    ({ id, cavity, role }) =>
      id !== tube.id && name !== "" && plain(cavity) === name && role === "collection",
  );
  const inside = mates.filter(({ status }) => status === "in");
  const isShut = ({ mode }: TubeState): boolean => shutModes.includes(mode);
  return {
    draining: [tube, ...inside.filter((mate) => !isShut(mate))],
    shut: inside.filter(isShut),
    mates,
  };
}
