import type { CSSProperties, ReactNode } from "react";
import { type Axis, cropTo, listAxis, narrowAxis, placeOf, ticksOf } from "#app/strip/axis.ts";
import styles from "./strip.module.css";

/** Names of the drawn parts; each stands once on a page, and every strip points to it. */
export const part = {
  axis: "#strip-axis",
  before: "#strip-before",
  start: "#strip-start",
  mark: "#strip-mark",
  target: "#strip-target",
  latest: "#strip-latest",
  hatch: "url(#strip-hatch)",
} as const;

const crop = cropTo(narrowAxis, listAxis);

/** For the element around a list's strips: where a narrow page cuts them. */
export const cropStyle = {
  "--strip-crop-x": `${crop.left}%`,
  "--strip-crop-width": `${crop.width}%`,
} as CSSProperties;

const isNarrow = ({ days }: { readonly days: number }): boolean =>
  -narrowAxis.before <= days && days <= narrowAxis.after;

/**
 * The head of a list's axis, and with it the parts that all its strips share. Days in words over their ticks; today is the
 * accent.
 */
export function AxisHead(): ReactNode {
  return (
    <svg className={styles.head} aria-hidden="true">
      <StripParts axis={listAxis} />
      {ticksOf(listAxis).map((tick) => (
        <text
          key={tick.days}
          x={`${tick.at}%`}
          y="100%"
          dy="-8"
          data-now={tick.days === 0 || undefined}
          data-wide={!isNarrow(tick) || undefined}
        >
          {tick.word}
        </text>
      ))}
    </svg>
  );
}

/** Grid, today's rule, the way ahead, and every sign: drawn once, used by each row. */
function StripParts({ axis }: { readonly axis: Axis }): ReactNode {
  const now = `${placeOf(0, axis)}%`;
  return (
    <defs>
      <g id="strip-axis">
        <Grid axis={axis} />
        <line className={styles.ahead} x1={now} x2="100%" y1="50%" y2="50%" />
        <line className={styles.today} x1={now} x2={now} y1="0" y2="100%" />
      </g>
      <StripSigns />
    </defs>
  );
}

type GridProps = {
  readonly axis: Axis;
  readonly most?: number;
  readonly from?: number;
  readonly to?: number | string;
};

/** A hairline at each tick but today's, as high as the drawing unless told. */
export function Grid({ axis, most, from = 0, to = "100%" }: GridProps): ReactNode {
  return ticksOf(axis, most).map(({ days, at }) =>
    days === 0 ? null : (
      <line key={days} className={styles.grid} x1={`${at}%`} x2={`${at}%`} y1={from} y2={to} />
    ),
  );
}

/** The signs of a strip, for a `defs`. Lengths in CSS pixels from the middle of the line. */
export function StripSigns(): ReactNode {
  return (
    <>
      <pattern id="strip-hatch" width="5" height="5" patternUnits="userSpaceOnUse">
        <path className={styles.hatch} d="M-1 1 1 -1M0 5 5 0M4 6 6 4" />
      </pattern>
      <circle id="strip-start" className={styles.start} r="4" />
      <path id="strip-before" className={styles.before} d="M0 0 9 -4.5V4.5Z" />
      <path id="strip-mark" className={styles.mark} d="M0 -4.5 4.5 0 0 4.5 -4.5 0Z" />
      <rect id="strip-target" className={styles.target} x="-1" y="-6" width="2" height="12" />
      <rect id="strip-latest" className={styles.latest} x="-1.5" y="-10" width="3" height="20" />
    </>
  );
}
