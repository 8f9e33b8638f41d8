import type { ReactNode } from "react";
import { listAxis, narrowAxis, placeOf } from "#app/strip/axis.ts";
import { drawStrip, type StripFacts } from "#app/strip/geometry.ts";
import { part } from "#app/strip/strip-defs.tsx";
import { StripClock, StripDiamond, StripWindow } from "#app/strip/strip-shapes.tsx";
import { stripText } from "#app/strip/strip-words.ts";
import styles from "./strip.module.css";

const todayAt = placeOf(0, listAxis);
const cutAt = placeOf(-narrowAxis.before, listAxis);

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
      <StripWindow strip={strip} />
      <StripClock strip={strip} todayAt={todayAt} cutAt={cutAt} />
      {strip.marks.map((mark) => (
        <StripDiamond key={mark.on} mark={mark} />
      ))}
    </svg>
  );
}
