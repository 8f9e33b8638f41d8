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
  return (
    <div className={styles.labels} aria-hidden="true">
      {deciding !== null && deciding.at !== null && decides !== undefined && (
        <span style={{ insetInlineStart: percentOf(scale.along(deciding.at)) }}>{partWords(decides)}</span>
      )}
    </div>
  );
}

type UnknownWordsProps = { readonly segments: readonly Segment[]; readonly scale: Scale };

/** The word over each hatched part that is long enough for it; the caption has every one. */
export function UnknownWords({ segments, scale }: UnknownWordsProps): ReactNode {
  return namedParts(segments)
    .filter(({ part, start }) => start.inner.known === "unknown" && (part === "shaft" || part === "hub"))
    .map((segment) => (
      <span
        key={segment.part}
        className={styles.word}
        style={{ insetInlineStart: middleOf(segment, scale) }}
        aria-hidden="true"
      >
        unknown
      </span>
    ));
}
