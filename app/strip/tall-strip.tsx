import type { ReactNode } from "react";
import { placeOf, ticksOf } from "#app/strip/axis.ts";
import { drawStrip } from "#app/strip/geometry.ts";
import { Grid, StripSigns } from "#app/strip/strip-defs.tsx";
import { percent, StripClock, StripDiamond, StripWindow } from "#app/strip/strip-shapes.tsx";
import { stripText } from "#app/strip/strip-words.ts";
import { labelsOf, plannedOn, stripFactsOf } from "#app/strip/tall-facts.ts";
import { lastOf, placeLabels, tallAxis } from "#app/strip/tall-layout.ts";
import { StripLabels, StripTract } from "#app/strip/tall-parts.tsx";
import type { Day } from "#shared/day/day.ts";
import type { OpenStep } from "#shared/step/step.ts";
import { tractAge } from "#shared/tube/clocks.ts";
import { tubeName } from "#shared/tube/name.ts";
import type { TubeState } from "#shared/tube/state.ts";
import { tractWords } from "#shared/words/clocks.ts";
import styles from "./strip.module.css";

type TallStripProps = {
  readonly tube: TubeState;
  /** The tube's open steps. */
  readonly steps: readonly OpenStep[];
  readonly today: Day;
};

/** Heights in CSS pixels, from the top: a line of letters for each lane, the window, the tract, the days. */
const LANE = 18;
const BAND = 36;
const TRACT = 28;
const TICKS = 22;

const MOST_TICKS = 9;

/** The dwell strip of one tube's own page: its events by name, and below the catheter's clock the tract's, as a thinner line. */
export function TallStrip({ tube, steps, today }: TallStripProps): ReactNode {
  const facts = stripFactsOf(tube, steps, today);
  const axis = tallAxis(today, facts.clockEarliest, lastOf(facts.latest, facts.target, plannedOn(tube)));
  const strip = drawStrip(facts, axis);
  const tract = drawStrip(
    { ...facts, clockEarliest: tube.tract.since.earliest, clockLatest: tube.tract.since.latest },
    axis,
  );
  const labels = placeLabels(labelsOf(tube, { strip, axis, today }));
  const middle = LANE * (1 + Math.max(...labels.map(({ lane }) => lane))) + BAND / 2;
  const foot = middle + BAND / 2 + TRACT;
  const todayAt = placeOf(0, axis);
  const now = percent(todayAt);
  const words = tractWords(tractAge(tube, today), tube.tract);
  return (
    <svg className={styles.tall} role="img" style={{ blockSize: foot + TICKS }}>
      <title>{`Dwell of ${tubeName(tube)}`}</title>
      <desc>{`${stripText(facts)}; tract ${words}`}</desc>
      <defs>
        <StripSigns />
      </defs>
      <Grid axis={axis} most={MOST_TICKS} from={middle - BAND / 2} to={foot} />
      {facts.outOn === null && <line className={styles.ahead} x1={now} x2="100%" y1={middle} y2={middle} />}
      <StripLabels labels={labels} baseline={(lane) => middle - BAND / 2 - 5 - LANE * lane} foot={middle} />
      <line className={styles.today} x1={now} x2={now} y1={middle - BAND / 2} y2={foot} />
      <g transform={`translate(0 ${middle})`} className={styles.band}>
        <StripWindow strip={strip} />
        <StripClock strip={strip} todayAt={todayAt} />
        {strip.marks.map((mark) => (
          <StripDiamond key={mark.on} mark={mark} />
        ))}
      </g>
      <g transform={`translate(0 ${foot - TRACT / 2})`} className={styles.tract}>
        <StripTract start={tract.start} age={tract.age} />
        <text x={now} dx="8" dy="4" data-wide="">
          tract {words}
        </text>
      </g>
      <g className={styles.days}>
        {ticksOf(axis, MOST_TICKS).map(({ days, at, word }) => (
          <text key={days} x={percent(at)} y={foot + TICKS - 6} data-now={days === 0 || undefined}>
            {word}
          </text>
        ))}
      </g>
    </svg>
  );
}
