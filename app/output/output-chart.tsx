import { type CSSProperties, type ReactNode, useId } from "react";
import { ChartAxes } from "#app/output/chart-axes.tsx";
import { ChartPoints } from "#app/output/chart-points.tsx";
import { Across, Band, BoxShape, Hatch, percent } from "#app/output/chart-shapes.tsx";
import type { ChartFacts } from "#shared/output/chart/chart-facts.ts";
import { type ChartFrame, frameOf } from "#shared/output/chart/chart-frame.ts";
import { type ChartDrawing, drawChart } from "#shared/output/chart/draw-chart.ts";
import { changeWords, chartSummary, letterKey, limitLabel } from "#shared/words/chart.ts";
import styles from "./chart.module.css";

/** What fits a page so that one day can be told from the next. */
export const CHART_DAYS = 21;

type OutputChartProps = {
  /** Whose output it is: "Left nephrostomy, 8 F". */
  readonly of: string;
  readonly facts: ChartFacts;
  /** Shared by charts that are to be held against each other; else it is drawn round this tube's own bars. */
  readonly frame?: ChartFrame | null;
  /** False where another chart beside it already says how they are read. */
  readonly keyed?: boolean;
};

/** From here on a band has room for its word. */
const NAMED_GAP = 10;
/** And from here on a narrow page. */
const WIDE_GAP = 25;
/** Change labels right of this are written to the left. */
const FAR = 65;
const LANES = 3;

/**
 * A tube's output: a bar a reading, as wide as its time and as high as its rate, so that its area is its volume. Each bar takes the
 * focus in turn and says its figures beneath; all of them are in the tables.
 */
export function OutputChart({
  of,
  facts,
  frame = frameOf([facts], CHART_DAYS),
  keyed = true,
}: OutputChartProps): ReactNode {
  const id = useId();
  if (frame === null || facts.span === null) return null;
  const drawing = drawChart(facts, frame);
  const hatch = `url(#${id}hatch)`;
  const lanes = { "--chart-lanes": Math.min(LANES, drawing.changes.length) } as CSSProperties;
  return (
    <figure className={styles.figure} style={lanes}>
      <svg className={styles.chart} aria-labelledby={`${id}title ${id}desc`}>
        <title id={`${id}title`}>{`Output of ${of}`}</title>
        <desc id={`${id}desc`}>{chartSummary(facts)}</desc>
        <Hatch id={`${id}hatch`} />
        <svg className={styles.over} aria-hidden="true">
          <ChartAxes drawing={drawing} />
          <Gaps drawing={drawing} hatch={hatch} />
        </svg>
        <ChartPoints drawing={drawing} zone={facts.zone} hatch={hatch} />
        <svg className={styles.over} aria-hidden="true">
          <Band band={drawing.band} />
          <Changes drawing={drawing} facts={facts} />
          {drawing.limit !== null && facts.limit !== null && (
            <>
              <Across y={drawing.limit} className={styles.limit} />
              <text x="100%" y={percent(drawing.limit)} dy="-5" data-end="">
                {limitLabel(facts.limit)}
              </text>
            </>
          )}
          <text className={styles.hint} x="0" y="100%" dy="40">
            Tab goes from bar to bar; its figures stand here.
          </text>
        </svg>
      </svg>
      <ChartKey drawing={drawing} keyed={keyed} />
    </figure>
  );
}

/** How it is read, and the letters that stand over its bars. */
function ChartKey({
  drawing,
  keyed,
}: {
  readonly drawing: ChartDrawing;
  readonly keyed: boolean;
}): ReactNode {
  const letters = letterKey(drawing.bars.map(({ reading }) => reading));
  return (
    <figcaption className={styles.caption}>
      {keyed &&
        "Wide as its time, high as its rate. Solid: net, what counts. Outlined on top: flush, not counted. Question mark: cannot tell. Hatched: no entry. "}
      {keyed && drawing.band !== null && "Pale band: the slope of the complete days, by its interval. "}
      {drawing.aspirates.length > 0 && "Diamond: drawn off at the procedure, no output. "}
      {letters !== "" && `Letters where the look changes: ${letters}.`}
    </figcaption>
  );
}

function Gaps({ drawing, hatch }: { readonly drawing: ChartDrawing; readonly hatch: string }): ReactNode {
  return drawing.gaps.map((gap) => (
    <g key={gap.x}>
      <BoxShape box={gap} className={styles.gap} fill={hatch} />
      {gap.width >= NAMED_GAP && (
        <text
          x={percent(gap.x + gap.width / 2)}
          y="50%"
          data-middle=""
          data-wide={gap.width < WIDE_GAP || undefined}
        >
          no entry
        </text>
      )}
    </g>
  ));
}

type ChangesProps = { readonly drawing: ChartDrawing; readonly facts: ChartFacts };

/** What ended a segment: a rule through the chart with its words over it. */
function Changes({ drawing, facts }: ChangesProps): ReactNode {
  return drawing.changes.map((change, index) => (
    <g key={`${change.at} ${change.kind}`}>
      <line
        className={styles.change}
        x1={percent(change.x)}
        x2={percent(change.x)}
        y1={-6 - 16 * (index % LANES)}
        y2="100%"
      />
      <text
        x={percent(change.x)}
        y={-8 - 16 * (index % LANES)}
        dx={change.x > FAR ? -4 : 4}
        data-end={change.x > FAR ? "" : undefined}
      >
        {changeWords(change, facts)}
      </text>
    </g>
  ));
}
