import type { ReactNode } from "react";
import { BarShape, percent } from "#app/output/chart-shapes.tsx";
import type { Zone } from "#shared/day/instant.ts";
import type { ChartDrawing, DrawnBar } from "#shared/output/chart/draw-chart.ts";
import { chartAspirateLine, chartReadingLines, lettersOf } from "#shared/words/chart.ts";
import styles from "./chart.module.css";

type PointsProps = { readonly drawing: ChartDrawing; readonly zone: Zone; readonly hatch: string };

/** Every bar and every sign as something that takes the focus, in order of time, and says what it shows. */
export function ChartPoints({ drawing, zone, hatch }: PointsProps): ReactNode {
  return (
    <>
      {drawing.aspirates.map((aspirate) => (
        <Point key={aspirate.id} lines={[chartAspirateLine(aspirate, zone)]}>
          <svg x={percent(aspirate.x)} overflow="visible" aria-hidden="true">
            <path className={styles.aspirate} d="M0 0 5 6 0 12 -5 6Z" />
          </svg>
        </Point>
      ))}
      {drawing.bars.map((bar) => (
        <Point key={bar.reading.id} lines={chartReadingLines(bar.reading, zone)}>
          <BarShape bar={bar} hatch={hatch} />
          <Letters bar={bar} />
        </Point>
      ))}
    </>
  );
}

type PointProps = { readonly lines: readonly string[]; readonly children: ReactNode };

function Point({ lines, children }: PointProps): ReactNode {
  return (
    <g className={styles.point} tabIndex={0}>
      <title>{lines.join(". ")}</title>
      {children}
      <svg className={styles.says} overflow="visible" aria-hidden="true">
        <text y="100%">
          {lines.map((line, index) => (
            <tspan key={line} x="0" dy={index === 0 ? 40 : 17}>
              {line}
            </tspan>
          ))}
        </text>
      </svg>
    </g>
  );
}

/** The look where it changes; that the frame cuts a bar, and that its net cannot be told. */
function Letters({ bar }: { readonly bar: DrawnBar }): ReactNode {
  const { letters, reading, cut, middle } = bar;
  const untold = bar.doubtful ?? bar.unknown;
  const over = [letters === null ? "" : lettersOf(reading.characters), cut ? "over" : ""].filter(Boolean);
  return (
    <svg className={styles.letters} overflow="visible" aria-hidden="true">
      {over.length > 0 && (
        <text x={percent(middle)} y={percent(letters ?? 0)} dy="-4">
          {over.join(" ")}
        </text>
      )}
      {untold !== null && (
        <text x={percent(middle)} y={percent(untold.y + untold.height / 2)} dy="4">
          ?
        </text>
      )}
    </svg>
  );
}
