import type { Character, Factor, Mode, Retention, Role } from "#shared/tube/vocabulary.ts";

/** What the target date of a row asks for. `operator's date`: the row has none, so without a plan it is due now. */
export type RowAsks = "exchange" | "review" | "operator's date";

/**
 * One interval row of a protocol, in days from the start of the catheter's clock; null is "no row", which is not zero.
 * Tract ages are days from the puncture.
 */
export type IntervalRow = {
  readonly id: string;
  readonly factor: Factor | null;
  readonly asks: RowAsks;
  readonly earliest: number | null;
  readonly target: number | null;
  readonly latest: number | null;
  /** A second ceiling that no plan may pass without its own reason (ureteral stent). */
  readonly hardLatest: number | null;
  /** "Immature if out, under this tract age." */
  readonly immatureUnder: number | null;
  readonly notRemovedBefore: number | null;
  readonly source: string;
};

export type KindDefinition = {
  /** The kind's name, as shown: lower case, without side. */
  readonly name: string;
  /** What people type for it. */
  readonly shortForms: readonly string[];
  readonly role: Role;
  readonly mode: Mode;
  readonly organ: string | null;
  /** True where the name is ambiguous without left, right or transplant. */
  readonly sided: boolean;
  readonly usualFrench: readonly [number, number];
  readonly retention: Retention;
  /** False for a tube wholly inside: no hub, no output, no length outside. */
  readonly outside: boolean;
  readonly expectedFluid: readonly Character[];
  /** Example flush order, as the trade writes it; null is "no row". An order is never subtracted. */
  readonly flushOrder: string | null;
  /** The first row without a factor is the kind's own. */
  readonly rows: readonly IntervalRow[];
};

/** A row with what it does not name left as "no row". */
export function row(given: Pick<IntervalRow, "id" | "asks" | "source"> & Partial<IntervalRow>): IntervalRow {
  const none = { earliest: null, target: null, latest: null };
  return { factor: null, ...none, hardLatest: null, immatureUnder: null, notRemovedBefore: null, ...given };
}
