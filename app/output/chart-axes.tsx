import type { ReactNode } from "react";
import { Across, percent } from "#app/output/chart-shapes.tsx";
import { printDate } from "#shared/day/print-day.ts";
import type { ChartDrawing } from "#shared/output/chart/draw-chart.ts";
import styles from "./chart.module.css";

/** A day that begins right of this has no room for its name. */
const AT_THE_END = 95;

/** Lines across with their mL/24 h, the days beneath, and zero. */
export function ChartAxes({ drawing }: { readonly drawing: ChartDrawing }): ReactNode {
  return (
    <g className={styles.axes}>
      {drawing.lines.map(({ ml, y }) => (
        <g key={ml}>
          <Across y={y} className={styles.grid} />
          <text x="-6" y={percent(y)} dy="4" data-end="">
            {Math.round(ml * 100) / 100}
          </text>
        </g>
      ))}
      <text x="-38" y="-12" data-unit="">
        mL/24 h
      </text>
      {drawing.days.map(({ day, x }, index) => (
        <g key={day}>
          <line className={styles.tick} x1={percent(x)} x2={percent(x)} y1="100%" y2="101.5%" />
          {x <= AT_THE_END && (
            <text x={percent(x)} y="100%" dy="18" data-wide={index % 2 === 1 || undefined}>
              {printDate(day)}
            </text>
          )}
        </g>
      ))}
      <Across y={drawing.zero} className={styles.zero} />
    </g>
  );
}
