import type { Character, Factor, Mode, Retention, Role, Route, SkinHold } from "#shared/tube/vocabulary.ts";

/** What the target date of a row asks for. `operator's date`: the row has none, so without a plan it is due now. */
export type RowAsks = "exchange" | "review" | "operator's date";

/** Which catheter of a tract a row is for. */
export type RowTurn = "any" | "first" | "later";

/** Ages of a tract that hang on the way it takes. */
export type AgesByRoute = {
  readonly route: Route;
  readonly immatureUnder: number;
  readonly notRemovedBefore: number;
};

/**
 * One interval row of a protocol, in days from the start of the catheter's clock; null is "no row", which is not zero.
 * Tract ages are days from the puncture.
 */
export type IntervalRow = {
  readonly id: string;
  readonly factor: Factor | null;
  readonly turn: RowTurn;
  readonly asks: RowAsks;
  /** What the table says in words beside its days: "on failure", "no exchange". */
  readonly note: string | null;
  readonly earliest: number | null;
  readonly target: number | null;
  readonly latest: number | null;
  /** A second ceiling that no plan may pass without its own reason (ureteral stent). */
  readonly hardLatest: number | null;
  /** No exchange in a tract younger than this, whatever is planned (suprapubic catheter). */
  readonly notExchangedBefore: number | null;
  /** "Immature if out, under this tract age." */
  readonly immatureUnder: number | null;
  /** The same where the patient is slow to heal. */
  readonly immatureIfSlowUnder: number | null;
  /** "Mature from", where the table leaves days between it and immature; null: mature as soon as not immature. */
  readonly matureFrom: number | null;
  /** Under this tract age what has to be done is done in hospital. */
  readonly inHospitalUnder: number | null;
  readonly notRemovedBefore: number | null;
  /** In place of `immatureUnder` and `notRemovedBefore`; of an unknown route the longest counts. */
  readonly byRoute: readonly AgesByRoute[];
  readonly source: string;
};

/** What is done when it falls out hangs on what it lies in: a row of shared/protocol/example-tube-out.ts. */
export const outGroups = ["kidney", "bile", "stomach or bowel", "bladder", "chest", "collection"] as const;
export type OutGroup = (typeof outGroups)[number];

/** Which rows of output measure it: shared/protocol/example-output.ts. */
export const outputGroups = [
  "collection",
  "lymphocele",
  "urine",
  "bile",
  "gallbladder",
  "chest",
  "pleural",
  "peritoneal",
] as const;
export type OutputGroup = (typeof outputGroups)[number];

export type Sourced<T> = T & { readonly source: string };

export type KindDefinition = {
  /** The kind's name, as shown: lower case, without side. */
  readonly name: string;
  /** What people type for it. One that several kinds share is refused, naming them. */
  readonly shortForms: readonly string[];
  /** Null: asked when the record opens. */
  readonly role: Role | null;
  /** Null: asked when the record opens. */
  readonly mode: Mode | null;
  readonly organ: string | null;
  /** True where the name is ambiguous without left, right or transplant. */
  readonly sided: boolean;
  /** Null is "no row". */
  readonly usualFrench: readonly [number, number] | null;
  /** What usually holds it; null where several do, or where it is asked. */
  readonly retention: Retention | null;
  /** False for a tube wholly inside: no hub, no output, no length outside. */
  readonly outside: boolean;
  readonly expectedFluid: readonly Character[];
  /** Example order of what is flushed, as the trade writes it; null is "no row". An order is never subtracted. */
  readonly flush: Sourced<{ readonly order: string }> | null;
  readonly ifOut: OutGroup | null;
  readonly output: OutputGroup | null;
  /** Days from placement, exchange or reposition until the tip is confirmed, and from then until again; null is "no row". */
  readonly tip: Sourced<{ readonly within: number; readonly again: number | null }> | null;
  /**
   * What usually holds it at the skin and is due out: anchors from day to day after the puncture, a suture after the tube was put in. Null is
   * "no row". The days are from memory: common practice, no source.
   */
  readonly skin: Sourced<{ readonly holds: SkinHold; readonly from: number; readonly to: number }> | null;
  /** The first row without a factor is the kind's own. */
  readonly rows: readonly IntervalRow[];
};

const noDays = {
  earliest: null,
  target: null,
  latest: null,
  hardLatest: null,
  notExchangedBefore: null,
  immatureUnder: null,
  immatureIfSlowUnder: null,
  matureFrom: null,
  inHospitalUnder: null,
  notRemovedBefore: null,
} as const;

/** A row with what it does not name left as "no row". */
export const row = (
  given: Pick<IntervalRow, "id" | "asks" | "source"> & Partial<IntervalRow>,
): IntervalRow => ({ factor: null, turn: "any", note: null, ...noDays, byRoute: [], ...given });
