import type { WhenAt } from "#shared/day/read-when-at.ts";
import type { RedFlagRow } from "#shared/protocol/red-flag-rows.ts";
import type { FormContext, NumberedTube } from "#shared/record/form.ts";

type Clock = Pick<FormContext, "today" | "now" | "zone">;

/** What a red flag is raised beside: the rows of the clinic's newest table, and the patient's tubes. */
export type RaisingContext = Clock & {
  readonly rows: readonly Pick<RedFlagRow, "id" | "level" | "says" | "untilReached">[];
  readonly tubes: readonly NumberedTube[];
};

/** What an open red flag is handed over or closed beside: when it was told. */
export type FlagContext = Clock & { readonly told: WhenAt };
