import type { Tract } from "#shared/call/tube-out.ts";
import type { Day } from "#shared/day/day.ts";
import type { TubeOutRow } from "#shared/protocol/tube-out-rows.ts";
import type { FlagInCall } from "#shared/record/call/calling-context.ts";
import type { FormContext, NumberedTube } from "#shared/record/form.ts";
import type { Length } from "#shared/size/length.ts";
import type { Fact } from "#shared/tube/certainty.ts";
import type { Slowing } from "#shared/tube/slow-to-heal.ts";

/** A tube that may be told out, with what its rows say then. */
export type TubeThatMayBeOut = NumberedTube & {
  /** The first day on which it may have lain there. */
  readonly inSince: Day | null;
  readonly tract: Tract;
  readonly slow: { readonly yes: readonly Slowing[]; readonly unknown: readonly Slowing[] };
  readonly rows: { readonly out: TubeOutRow | null; readonly "part out": TubeOutRow | null };
  /** Null: the table has no red flag for it. */
  readonly flag: FlagInCall | null;
  readonly size: Fact<Length>;
  readonly below: Length | null;
};

/** What a tube that is out is recorded beside. Those that are not in stand among them, so that a sentence says so. */
export type OutContext = Omit<FormContext, "tubes" | "tube"> & {
  readonly tubes: readonly TubeThatMayBeOut[];
};
