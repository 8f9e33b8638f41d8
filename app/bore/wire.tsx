import type { ReactNode } from "react";
import { MIDDLE, type Scale, SIDE } from "#app/bore/scale.ts";
import type { WireBar } from "#shared/fit/profile-wire.ts";
import styles from "./bore.module.css";

type WireProps = { readonly wire: WireBar; readonly scale: Scale };

/** A stop is seen: the bar ends a little before what stops it. */
const SHORT_OF = 5;

/** Where the bar ends: before what stops it, at what nobody knows, or out over the tip. */
function endOf({ ends, to }: WireBar, scale: Scale): number {
  switch (ends) {
    case "through":
      return SIDE - 8;
    case "stopped":
      return scale.along(to) - SHORT_OF;
    case "in doubt":
    case "unknown":
      return scale.along(to);
  }
}

/** The wire from the left, as far as it comes; past a doubtful place its outline goes on, dashed. */
export function Wire({ wire, scale }: WireProps): ReactNode {
  const thick = scale.across(wire.width);
  const top = MIDDLE - thick / 2;
  const end = endOf(wire, scale);
  return (
    <g>
      <rect className={styles.wire} x={0} y={top} width={end} height={thick} />
      {wire.ends === "in doubt" && (
        <rect className={styles.wireInDoubt} x={end} y={top} width={SIDE - 8 - end} height={thick} />
      )}
    </g>
  );
}
