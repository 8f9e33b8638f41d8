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

type WindowProps = { readonly strip: Pick<Strip, "hatched" | "open" | "target" | "latest"> };

/** The low band of the window, its target, and the tall bar of its latest date. */
export function StripWindow({ strip: { hatched, open, target, latest } }: WindowProps): ReactNode {
  return (
    <>
      {hatched !== null && <rect {...box(hatched)} y="-6" height="12" fill={part.hatch} />}
      {open !== null && <rect {...box(open)} y="-6" height="12" />}
      {target !== null && <use href={part.target} x={percent(target)} />}
      {latest !== null && <use href={part.latest} x={percent(latest)} />}
    </>
  );
}

type ClockProps = {
  readonly strip: Pick<Strip, "start" | "age" | "late">;
  readonly todayAt: Place;
  /** Where a narrow page cuts the drawing; a line that begins before gets its arrow head there. */
  readonly cutAt?: Place;
};

/** Where the clock began, and the line of its age; the part past the latest date is heavier. */
export function StripClock({ strip: { start, age, late }, todayAt, cutAt = 0 }: ClockProps): ReactNode {
  return (
    <>
      {start.kind === "unknown" && (
        <>
          <line x1="0" x2={percent(todayAt)} data-undated="" />
          <text x={percent((cutAt + todayAt) / 2)} y="-6">
            ?
          </text>
        </>
      )}
      {age !== null && <line {...ends(age)} />}
      {late !== null && <line {...ends(late)} data-late="" />}
      {start.kind === "before the axis" && <use href={part.before} />}
      {age !== null && age.from < cutAt && <use href={part.before} x={percent(cutAt)} data-narrow="" />}
      {start.kind === "day" && <use href={part.start} x={percent(start.at)} />}
      {start.kind === "span" && <rect {...box(start)} y="-4" height="8" rx="4" data-span="" />}
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
