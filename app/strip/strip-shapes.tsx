import type { ReactNode } from "react";
import type { Place } from "#app/strip/axis.ts";
import type { DrawnMark, Reach, Strip } from "#app/strip/geometry.ts";
import { part } from "#app/strip/strip-defs.tsx";
import { printDay } from "#shared/day/print-day.ts";

export const percent = (place: Place): string => `${place}%`;

export const ends = ({ from, to }: Reach) => ({ x1: percent(from), x2: percent(to) });

const box = ({ from, to }: Reach) => ({
  x: percent(from),
  width: percent(Math.round((to - from) * 100) / 100),
});

/*
 * A page of the list holds fifty strips, and each element of each costs its time on the server: signs at the beginning of a
 * line are its markers, and nothing is grouped.
 */

type WindowProps = { readonly strip: Pick<Strip, "hatched" | "open" | "target" | "latest" | "late"> };

/** The low band of the window, its target, and the tall bar of its latest date, which a late line carries itself. */
export function StripWindow({ strip }: WindowProps): ReactNode {
  const { hatched, open, target, latest, late } = strip;
  return (
    <>
      {hatched !== null && <rect {...box(hatched)} y="-6" height="12" fill={part.hatch} />}
      {open !== null && <rect {...box(open)} y="-6" height="12" />}
      {target !== null && <use href={part.target} x={percent(target)} />}
      {latest !== null && latest !== late?.from && <use href={part.latest} x={percent(latest)} />}
    </>
  );
}

type ClockProps = {
  readonly strip: Pick<Strip, "start" | "age" | "late" | "latest">;
  readonly todayAt: Place;
  /** Where a narrow page cuts the drawing; a line that begins before gets its arrow head there. */
  readonly cutAt?: Place;
};

/** Where the clock began, and the line of its age; the part past the latest date is heavier. */
export function StripClock({ strip, todayAt, cutAt = 0 }: ClockProps): ReactNode {
  const { start, age, late, latest } = strip;
  return (
    <>
      {start.kind === "unknown" && <Undated todayAt={todayAt} cutAt={cutAt} />}
      {age !== null && <line {...ends(age)} markerStart={beginning[start.kind]} />}
      {late !== null && (
        <line {...ends(late)} data-late="" markerStart={late.from === latest ? part.lateFrom : undefined} />
      )}
      {age !== null && age.from < cutAt && <use href={part.before} x={percent(cutAt)} data-narrow="" />}
      {start.kind === "day" && age === null && <use href={part.start} x={percent(start.at)} />}
      {start.kind === "span" && <rect {...box(start)} y="-4" height="8" rx="4" data-span="" />}
    </>
  );
}

const beginning = {
  day: part.began,
  "before the axis": part.beganBefore,
  span: undefined,
  unknown: undefined,
} as const satisfies Record<Strip["start"]["kind"], string | undefined>;

function Undated({ todayAt, cutAt }: { readonly todayAt: Place; readonly cutAt: Place }): ReactNode {
  return (
    <>
      <line x1="0" x2={percent(todayAt)} data-undated="" />
      <text x={percent((cutAt + todayAt) / 2)} y="-6">
        ?
      </text>
    </>
  );
}

/** One day's events; named when it is pointed at. */
export function StripDiamond({ mark }: { readonly mark: DrawnMark }): ReactNode {
  return (
    <use href={part.mark} x={percent(mark.at)}>
      <title>{`${mark.kinds.join(", ")}, ${printDay(mark.on)}`}</title>
    </use>
  );
}
