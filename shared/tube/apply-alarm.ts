import { type Applied, type Appliers, restsOn } from "#shared/tube/applied.ts";
import type { EventOf } from "#shared/tube/event.ts";
import type { TubeState } from "#shared/tube/state.ts";

/** The newest of a row stands in the place of the one before. */
function usualAccepted(tube: TubeState, event: EventOf<"usual level accepted">): Applied {
  const { row, mlPer24h, until, acceptedBy } = event.payload;
  const others = tube.usual.filter((level) => level.row !== row);
  return { tube: { ...tube, usual: [...others, { ...restsOn(event), row, mlPer24h, until, acceptedBy }] } };
}

export const alarmAppliers: Appliers<"alarm closed" | "usual level accepted"> = {
  "alarm closed": (tube, { payload }) => ({
    tube: { ...tube, answered: [...tube.answered, ...payload.answers] },
  }),
  "usual level accepted": usualAccepted,
};
