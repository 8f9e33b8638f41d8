import type { FoundAt } from "#shared/clinical/clinical-state.ts";
import type { Findings } from "#shared/clinical/findings-schema.ts";
import { shutModes } from "#shared/output/low-day.ts";
import type { FoundWhileShut, TubeState } from "#shared/tube/state.ts";

const isShut = ({ mode }: TubeState): boolean => shutModes.includes(mode);

/** A tube with what was found of its patient while it is in and shut; any other tube as it stands. */
export function withFound(tube: TubeState, findings: Findings, at: FoundAt): TubeState {
  if (tube.status !== "in" || !isShut(tube)) return tube;
  const { temperature, chills, feels, pain, jaundice } = findings;
  const found: FoundWhileShut = { ...at, findings: { temperature, chills, feels, pain, jaundice } };
  const last = tube.shutSpells.at(-1);
  if (last === undefined || last.over)
    return { ...tube, shutSpells: [...tube.shutSpells, { over: false, found: [found] }] };
  return { ...tube, shutSpells: tube.shutSpells.with(-1, { ...last, found: [...last.found, found] }) };
}

/** A tube after an entry: opened again, what was found of its patient from then on is not of the time in which it was shut. */
export function spellsOver(tube: TubeState): TubeState {
  const last = tube.shutSpells.at(-1);
  if (last === undefined || last.over || isShut(tube)) return tube;
  return { ...tube, shutSpells: tube.shutSpells.with(-1, { ...last, over: true }) };
}
