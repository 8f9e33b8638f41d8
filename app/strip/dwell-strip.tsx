import type { ReactNode } from "react";
import { listAxis, narrowAxis, placeOf } from "#app/strip/axis.ts";
import { type DrawnMark, drawStrip, type Reach, type Strip, type StripFacts } from "#app/strip/geometry.ts";
import { part } from "#app/strip/strip-defs.tsx";
import { stripText } from "#app/strip/strip-words.ts";
import { printDay } from "#shared/day/print-day.ts";
import styles from "./strip.module.css";

type DwellStripProps = {
  /** Whose strip it is, for those who hear it: "Left nephrostomy, 8 F, locking loop". */
  readonly title: string;
  readonly facts: StripFacts;
};

/** One tube on the axis that all rows of its list share. Stands in a cell of its own, which it fills; needs an AxisHead above. */
export function DwellStrip({ title, facts }: DwellStripProps): ReactNode {
  const strip = drawStrip(facts, listAxis);
  return (
    <svg className={styles.strip} role="img">
      <title>{title}</title>
      <desc>{stripText(facts)}</desc>
      <use href={part.axis} />
      <g>
        <StripWindow strip={strip} />
        <StripClock strip={strip} />
        {strip.marks.map((mark) => (
          <StripDiamond key={mark.on} mark={mark} />
        ))}
      </g>
    </svg>
  );
}

const percent = (place: number): string => `${place}%`;

const ends = ({ from, to }: Reach) => ({ x1: percent(from), x2: percent(to) });
const box = ({ from, to }: Reach) => ({
  x: percent(from),
  width: percent(Math.round((to - from) * 100) / 100),
});

/** The low band of the window, its target, and the tall bar of its latest date. */
export function StripWindow({ strip }: { readonly strip: Strip }): ReactNode {
  return (
    <>
      {strip.hatched !== null && <rect {...box(strip.hatched)} y="-6" height="12" fill={part.hatch} />}
      {strip.open !== null && <rect {...box(strip.open)} y="-6" height="12" />}
      {strip.target !== null && <use href={part.target} x={percent(strip.target)} />}
      {strip.latest !== null && <use href={part.latest} x={percent(strip.latest)} />}
    </>
  );
}

const todayAt = placeOf(0, listAxis);
const narrowFrom = placeOf(-narrowAxis.before, listAxis);

/** Where the clock began, and the line of its age; a part of it past the latest date is heavier. */
function StripClock({ strip: { start, age, late } }: { readonly strip: Strip }): ReactNode {
  return (
    <>
      {start.kind === "unknown" && (
        <>
          <line x1="0" x2={percent(todayAt)} data-undated="" />
          <text x={percent((narrowFrom + todayAt) / 2)} y="-6">
            ?
          </text>
        </>
      )}
      {age !== null && <line {...ends(age)} />}
      {late !== null && <line {...ends(late)} data-late="" />}
      {start.kind === "before the axis" && <use href={part.before} />}
      {age !== null && age.from < narrowFrom && (
        <use href={part.before} x={percent(narrowFrom)} data-narrow="" />
      )}
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
