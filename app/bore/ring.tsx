import type { ReactNode } from "react";
import { MIDDLE, RING_AT, type Scale } from "#app/bore/scale.ts";
import type { Deciding } from "#shared/fit/bore-profile.ts";
import styles from "./bore.module.css";

type RingProps = { readonly ring: Deciding["ring"]; readonly scale: Scale; readonly hatch: string };

/** The cut across the tube at the deciding place, in the scale of the side view, with the wire's circle over it. */
export function Ring({ ring, scale, hatch }: RingProps): ReactNode {
  const { outer, inner, wire } = ring;
  const circle = (width: number, className: string | undefined): ReactNode => (
    <circle className={className} cx={RING_AT} cy={MIDDLE} r={scale.across(width) / 2} />
  );
  return (
    <g>
      {circle(outer.width, outer.recorded ? styles.wall : styles.guessed)}
      {inner.known === "measured" && inner.most > inner.least && circle(inner.most, styles.maybe)}
      {inner.known === "measured" && circle(inner.least, styles.way)}
      {inner.known === "by label" && circle(inner.width, styles.labeledWay)}
      {inner.known === "unknown" && (
        <circle fill={hatch} cx={RING_AT} cy={MIDDLE} r={scale.across(outer.width) / 2} />
      )}
      {circle(wire, styles.wireOver)}
    </g>
  );
}
