import { dayAt, type Instant, type Zone } from "#shared/day/instant.ts";
import type { FormContext, StaffInForm } from "#shared/record/form.ts";
import { numberedTubes } from "#shared/record/numbered-tubes.ts";
import { tubeInForm } from "#shared/record/tube-in-form.ts";
import type { ShelfType } from "#shared/shelf/shelf-type.ts";
import type { Why } from "#shared/step/step.ts";
import type { TubeState } from "#shared/tube/state.ts";

/** Where and when a form is typed, about which tube of which, and by what id a record would be known that it opens. */
export type Beside = {
  readonly at: Instant;
  readonly zone: Zone;
  readonly tubes: readonly TubeState[];
  readonly tube: TubeState | null;
  readonly newTubeId: string;
  readonly staff: readonly StaffInForm[];
  readonly shelf: readonly ShelfType[];
  /** The why of the tube's alarm; left out where none stands. */
  readonly alarm?: readonly Why[];
};

/** What a form is read beside: a record that it opens is the patient's next. */
export const formBeside = ({
  at,
  zone,
  tubes,
  tube,
  newTubeId,
  staff,
  shelf,
  alarm,
}: Beside): FormContext => ({
  today: dayAt(at, zone),
  now: at,
  zone,
  tube: tube === null ? null : tubeInForm(tube, alarm),
  tubes: numberedTubes(tubes),
  opens: { tubeId: newTubeId, number: Math.max(0, ...tubes.map(({ number }) => number)) + 1 },
  staff,
  shelf,
});
