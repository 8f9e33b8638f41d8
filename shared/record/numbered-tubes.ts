import type { NumberedTube } from "#shared/record/form.ts";
import type { TubeState } from "#shared/tube/state.ts";

/** A patient's tubes as a form names them, without what it does not need. */
export const numberedTubes = (tubes: readonly TubeState[]): NumberedTube[] =>
  tubes.map(({ id, number, kind, side, status }) => ({ id, number, kind, side, status }));
