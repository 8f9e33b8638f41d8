import type { ReactNode } from "react";
import type { Reach, Start } from "#app/strip/geometry.ts";
import { ends, percent } from "#app/strip/strip-shapes.tsx";
import type { PlacedLabel } from "#app/strip/tall-layout.ts";
import styles from "./strip.module.css";

type LabelsProps = {
  readonly labels: readonly PlacedLabel[];
  /** Where a lane's line of letters stands, and where the leaders end. In CSS pixels from the top. */
  readonly baseline: (lane: number) => number;
  readonly foot: number;
};

/** Events by name, each over its place, with a leader down to it. */
export function StripLabels({ labels, baseline, foot }: LabelsProps): ReactNode {
  return (
    <g data-wide="">
      {labels.map(({ at, text, lane }) => (
        <g key={`${at} ${text}`}>
          <line
            className={styles.leader}
            x1={percent(at)}
            x2={percent(at)}
            y1={baseline(lane) - 10}
            y2={foot}
          />
          <text x={percent(at)} dx="5" y={baseline(lane)}>
            {text}
          </text>
        </g>
      ))}
    </g>
  );
}

type TractProps = { readonly start: Start; readonly age: Reach | null };

/** The tract's clock: the same beginning signs, on a thinner line. */
export function StripTract({ start, age }: TractProps): ReactNode {
  return (
    <>
      {age !== null && <line {...ends(age)} />}
      {start.kind === "before the axis" && <path d="M0 0 7 -3.5V3.5Z" />}
      {start.kind === "day" && <circle cx={percent(start.at)} r="3" />}
      {start.kind === "span" && (
        <line x1={percent(Math.max(0, start.from))} x2={percent(start.to)} data-span="" />
      )}
    </>
  );
}
