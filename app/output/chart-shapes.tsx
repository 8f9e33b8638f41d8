import type { ReactNode } from "react";
import type { Box, ChartDrawing, DrawnBar, Point } from "#shared/output/chart/draw-chart.ts";
import styles from "./chart.module.css";

export const percent = (place: number): string => `${place}%`;

type BoxProps = { readonly box: Box | null; readonly className?: string | undefined; readonly fill?: string };

/** A box in percent; nothing where there is none. */
export function BoxShape({ box, className, fill }: BoxProps): ReactNode {
  if (box === null) return null;
  const { x, y, width, height } = box;
  return (
    <rect
      className={className}
      fill={fill}
      x={percent(x)}
      y={percent(y)}
      width={percent(width)}
      height={percent(height)}
    />
  );
}

type BarProps = { readonly bar: DrawnBar; readonly hatch: string };

/** Solid is counted, outlined is the flush that is not, dashed cannot be told. */
export function BarShape({ bar, hatch }: BarProps): ReactNode {
  return (
    <>
      <BoxShape box={bar.unknown} className={styles.doubtful} fill={hatch} />
      <BoxShape box={bar.counted} className={styles.counted} />
      <BoxShape box={bar.notCounted} className={styles.notCounted} />
      <BoxShape box={bar.doubtful} className={styles.doubtful} />
    </>
  );
}

/** The hatching of time that nobody wrote down. */
export const Hatch = ({ id }: { readonly id: string }): ReactNode => (
  <pattern id={id} width="6" height="6" patternUnits="userSpaceOnUse">
    <path className={styles.hatch} d="M-1 1 1 -1M0 6 6 0M5 7 7 5" />
  </pattern>
);

const corners = (points: readonly Point[]): string => points.map(({ x, y }) => `${x},${y}`).join(" ");

/** The trend between the two ends of its interval. Corners take no percent, so that it has a drawing of its own. */
export function Band({ band }: Pick<ChartDrawing, "band">): ReactNode {
  if (band === null) return null;
  return (
    <svg width="100%" height="100%" viewBox="0 0 100 100" preserveAspectRatio="none" aria-hidden="true">
      <polygon className={styles.band} points={corners(band)} />
    </svg>
  );
}

/** A line across the whole drawing. */
export const Across = ({ y, className }: { readonly y: number; readonly className?: string | undefined }) => (
  <line className={className} x1="0" x2="100%" y1={percent(y)} y2={percent(y)} />
);
