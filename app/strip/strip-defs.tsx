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
  /** The same signs as markers at the beginning of a line. */
  began: "url(#strip-began)",
  beganBefore: "url(#strip-began-before)",
  lateFrom: "url(#strip-late-from)",
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

/** Half the height of the tallest row, in CSS pixels: the rules are drawn longer than any, and the row cuts them. */
const TALLEST = 200;

/** Grid, today's rule, the way ahead, and every sign: drawn once, used by each row. */
function StripParts({ axis }: { readonly axis: Axis }): ReactNode {
  const now = `${placeOf(0, axis)}%`;
  return (
    <defs>
      <g id="strip-axis">
        <Grid axis={axis} from={-TALLEST} to={TALLEST} />
        <line className={styles.ahead} x1={now} x2="100%" />
        <line className={styles.today} x1={now} x2={now} y1={-TALLEST} y2={TALLEST} />
      </g>
      <StripSigns />
    </defs>
  );
}

type GridProps = { readonly axis: Axis; readonly most?: number; readonly from: number; readonly to: number };

/** A hairline at each tick but today's, from one height to another. */
export function Grid({ axis, most, from, to }: GridProps): ReactNode {
  return ticksOf(axis, most).map(({ days, at }) =>
    days === 0 ? null : (
      <line key={days} className={styles.grid} x1={`${at}%`} x2={`${at}%`} y1={from} y2={to} />
    ),
  );
}

/** A marker in CSS pixels from the point where it stands, whatever the width of its line. */
const asDrawn = { markerUnits: "userSpaceOnUse", overflow: "visible" } as const;

/** The signs of a strip, for a `defs`. Lengths in CSS pixels from the middle of the line. */
export function StripSigns(): ReactNode {
  return (
    <>
      <pattern id="strip-hatch" width="5" height="5" patternUnits="userSpaceOnUse">
        <path className={styles.hatch} d="M-1 1 1 -1M0 5 5 0M4 6 6 4" />
      </pattern>
      <marker id="strip-began" {...asDrawn}>
        <circle id="strip-start" className={styles.start} r="4" />
      </marker>
      <marker id="strip-began-before" {...asDrawn}>
        <path id="strip-before" className={styles.before} d="M0 0 9 -4.5V4.5Z" />
      </marker>
      <path id="strip-mark" className={styles.mark} d="M0 -4.5 4.5 0 0 4.5 -4.5 0Z" />
      <rect id="strip-target" className={styles.target} x="-1" y="-6" width="2" height="12" />
      <marker id="strip-late-from" {...asDrawn}>
        <rect id="strip-latest" className={styles.latest} x="-1.5" y="-10" width="3" height="20" />
      </marker>
    </>
  );
}
