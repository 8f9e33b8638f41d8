import { lessSure } from "#shared/fit/reach.ts";
import type { PlanningRows } from "#shared/protocol/planning-rows.ts";
import { lengthOf } from "#shared/size/exact-length.ts";
import type { Length } from "#shared/size/length.ts";
import { type Certainty, type Fact, known } from "#shared/tube/certainty.ts";

/** What is asked: the wire, the tube in place, and everything that is passed over the wire. */
export type WireLengthQuestion = {
  readonly wire: Fact<Length>;
  readonly fullLength: Fact<Length>;
  readonly externalLength: Fact<Length>;
  /** Full lengths of the devices: the tube to come, its stiffener, a sheath. */
  readonly devices: readonly Fact<Length>[];
  readonly row: PlanningRows["wire"];
};

export type WireLengthMissing =
  | "length of the wire"
  | "full length of the tube in place"
  | "external length of the tube in place"
  | "length of what goes over the wire"
  | "row";

/** Each part of the sum, so that the arithmetic can be shown: inside + beyond the tip + longest device + grip. */
export type WireLengthSum = {
  readonly inside: Length;
  readonly beyondTip: { readonly from: Length; readonly to: Length };
  readonly device: Length;
  readonly grip: Length;
  readonly needed: { readonly from: Length; readonly to: Length };
};

export type WireLength =
  | {
      readonly verdict: "long enough" | "too short";
      readonly wire: Length;
      readonly by: Length;
      readonly sum: WireLengthSum;
    }
  | {
      /** Enough for the least that the row asks beyond the tip and not for the most, or counted from what nobody here has measured. */
      readonly verdict: "doubt";
      readonly wire: Length;
      readonly sum: WireLengthSum;
      readonly certainty: Exclude<Certainty, "unknown">;
    }
  | { readonly verdict: "cannot tell"; readonly missing: readonly WireLengthMissing[] }
  /** More of the tube is outside than there is of it: one of the two was measured or typed wrong. */
  | { readonly verdict: "external longer than full"; readonly external: Length; readonly full: Length };

function missingOf({
  wire,
  fullLength,
  externalLength,
  devices,
  row,
}: WireLengthQuestion): WireLengthMissing[] {
  const unknown = ({ certainty }: Fact<Length>): boolean => certainty === "unknown";
  return [
    ...(unknown(wire) ? (["length of the wire"] as const) : []),
    ...(unknown(fullLength) ? (["full length of the tube in place"] as const) : []),
    ...(unknown(externalLength) ? (["external length of the tube in place"] as const) : []),
    ...(devices.length === 0 || devices.some(unknown)
      ? (["length of what goes over the wire"] as const)
      : []),
    ...(row === null ? (["row"] as const) : []),
  ];
}

const plus = (...lengths: readonly Length[]): Length =>
  lengths.reduce<number>((sum, length) => sum + length, 0) as Length;

function sumOf(inside: Length, device: Length, row: NonNullable<PlanningRows["wire"]>): WireLengthSum {
  const beyondTip = {
    from: lengthOf(row.beyondTipCm.from, "cm"),
    to: lengthOf(row.beyondTipCm.to, "cm"),
  };
  const grip = lengthOf(row.gripCm, "cm");
  const needed = {
    from: plus(inside, beyondTip.from, device, grip),
    to: plus(inside, beyondTip.to, device, grip),
  };
  return { inside, beyondTip, device, grip, needed };
}

/**
 * Is the wire long enough to keep access while the longest device goes over it: what is inside of the tube in place (full less
 * external) + wire beyond the tip (row) + the longest device + something to hold (row). Long enough for all that the row asks beyond the tip is
 * long enough; too short for the least of it is too short; between is doubt, and so is every sum with a length that nobody
 * here has measured. A longer wire never fails where a shorter is enough.
 */
export function wireLength(question: WireLengthQuestion): WireLength {
  const { wire, fullLength, externalLength, devices, row } = question;
  const missing = missingOf(question);
  const [of, full, external] = [wire, fullLength, externalLength].map(known);
  const over = devices.flatMap((device) => known(device) ?? []);
  if (missing.length > 0 || of === undefined || full === undefined || external === undefined || row === null)
    return { verdict: "cannot tell", missing };
  if (external > full) return { verdict: "external longer than full", external, full };
  const sum = sumOf((full - external) as Length, Math.max(...over) as Length, row);
  const all = [fullLength, externalLength, ...devices];
  const certainty = all.reduce((worst, fact) => lessSure(worst, fact.certainty), wire.certainty);
  const { from, to } = sum.needed;
  if (certainty !== "unknown" && (certainty !== "confirmed" || (of >= from && of < to)))
    return { verdict: "doubt", wire: of, sum, certainty };
  return of >= to
    ? { verdict: "long enough", wire: of, by: (of - to) as Length, sum }
    : { verdict: "too short", wire: of, by: (from - of) as Length, sum };
}
