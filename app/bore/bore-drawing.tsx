import { type ReactNode, useId } from "react";
import { figureWords, goesWords, ringWords } from "#app/bore/bore-words.ts";
import { Labels, UnknownWord } from "#app/bore/labels.tsx";
import { Ring } from "#app/bore/ring.tsx";
import { HEIGHT, scaleOf, WIDTH } from "#app/bore/scale.ts";
import { Wall } from "#app/bore/wall.tsx";
import { Wire } from "#app/bore/wire.tsx";
import type { BoreProfile } from "#shared/fit/bore-profile.ts";
import { type Named, sizeLine, WIRE } from "#shared/words/passage.ts";
import styles from "./bore.module.css";

type BoreDrawingProps = {
  readonly profile: BoreProfile;
  /** "The tube in place". */
  readonly of: string;
  /** What goes through it; a wire unless it is said. */
  readonly goes?: Named;
};

/**
 * One thing and what it goes through from the side: a stepped wall, the wire as far as it comes, a rule through the deciding place, the cut
 * there. Words stand outside the drawing, which shrinks with the page; every figure is text below it.
 */
export function BoreDrawing({ profile, of, goes = WIRE }: BoreDrawingProps): ReactNode {
  const id = useId();
  const { segments, wire, deciding, bySize, across } = profile;
  const scale = scaleOf(across);
  const hatch = `url(#${id}hatch)`;
  return (
    <figure className={styles.figure}>
      <Labels profile={profile} scale={scale} />
      <div className={styles.drawing}>
        <svg viewBox={`0 0 ${WIDTH} ${HEIGHT}`} role="img" aria-labelledby={`${id}title ${id}desc`}>
          <title id={`${id}title`}>{`${of} and the ${goes.name}, from the side`}</title>
          <desc id={`${id}desc`}>{sizeLine(bySize, goes)}</desc>
          <pattern id={`${id}hatch`} width="7" height="7" patternUnits="userSpaceOnUse">
            <path className={styles.hatch} d="M-1 1 1 -1M0 7 7 0M6 8 8 6" />
          </pattern>
          {segments.map((segment) => (
            <Wall key={segment.part} {...{ segment, scale, hatch }} />
          ))}
          {wire !== null && <Wire wire={wire} scale={scale} />}
          {deciding !== null && <Ring ring={deciding.ring} {...{ scale, hatch }} />}
          {deciding !== null && deciding.at !== null && (
            <path
              className={styles.rule}
              data-stops={bySize.verdict !== "passes" || undefined}
              d={`M${scale.along(deciding.at)} 0V${HEIGHT}`}
            />
          )}
        </svg>
        <UnknownWord segments={segments} scale={scale} />
      </div>
      <figcaption className={styles.caption}>
        <b>{goesWords(profile, goes.name)}</b>
        {figureWords(profile).map((words) => (
          <span key={words}>{words}</span>
        ))}
        {deciding !== null && <span>{ringWords(deciding)}</span>}
        <span>To scale across; lengths are not to scale.</span>
      </figcaption>
    </figure>
  );
}
