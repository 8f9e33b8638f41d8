import type { TubeState } from "#shared/tube/state.ts";

/** In, or told out and confirmed by nobody: until somebody has seen it out, what it does in there has to be counted with. */
export const mayLieIn = ({ status }: Pick<TubeState, "status">): boolean =>
  status === "in" || status === "removal not confirmed";
