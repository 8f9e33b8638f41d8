import type { Protocol } from "#shared/protocol/protocol.ts";
import type { RedFlagRow } from "#shared/protocol/red-flag-rows.ts";
import type { TroubleKind } from "#shared/tube/vocabulary.ts";

/** The red flag that an entry of trouble raises by itself; undefined is "no row". */
export const flagRaisedBy = (
  { redFlags }: Protocol,
  trouble: { readonly kind: TroubleKind; readonly grave: boolean },
): RedFlagRow | undefined =>
  redFlags.find(({ raisedBy }) =>
    raisedBy.some((by) => by.trouble === trouble.kind && by.grave === trouble.grave),
  );
