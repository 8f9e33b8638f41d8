import type { ReactNode } from "react";
import { namedParts, partWords } from "#app/bore/bore-words.ts";
import { percentOf, type Scale } from "#app/bore/scale.ts";
import type { BoreProfile } from "#shared/fit/bore-profile.ts";
import type { Segment } from "#shared/fit/profile-segments.ts";
import styles from "./bore.module.css";

const middleOf = ({ from, to }: Segment, scale: Scale): string =>
  percentOf((scale.along(from) + scale.along(to)) / 2);

type LabelsProps = { readonly profile: BoreProfile; readonly scale: Scale };

/** The deciding place named over its rule. The other places are named in the caption. */
export function Labels({ profile, scale }: LabelsProps): ReactNode {
  const { deciding, segments } = profile;
  const decides = segments.find(({ part }) => part === deciding?.place);
  if (deciding === null || deciding.at === null || decides === undefined) return null;
  return (
    <div className={styles.labels} aria-hidden="true">
      <span
        data-far={deciding.at > 0.5 || undefined}
        style={{ insetInlineStart: percentOf(scale.along(deciding.at)) }}
      >
        {partWords(decides)}
      </span>
    </div>
  );
}

type UnknownWordProps = { readonly segments: readonly Segment[]; readonly scale: Scale };

/** The word over the longest hatched part; the caption has every one. */
export function UnknownWord({ segments, scale }: UnknownWordProps): ReactNode {
  const [longest] = namedParts(segments)
    .filter(({ start }) => start.inner.known === "unknown")
    .toSorted((a, b) => b.to - b.from - (a.to - a.from));
  if (longest === undefined) return null;
  return (
    <span className={styles.word} style={{ insetInlineStart: middleOf(longest, scale) }} aria-hidden="true">
      unknown
    </span>
  );
}
