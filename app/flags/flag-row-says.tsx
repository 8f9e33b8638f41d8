import type { ReactNode } from "react";
import { Now } from "#app/ui/now.tsx";
import type { RedFlagRow } from "#shared/protocol/red-flag-rows.ts";
import { reachWords } from "#shared/words/red-flag-page.ts";

type Said = Pick<RedFlagRow, "level" | "untilReached">;

/** How soon somebody is reached, and what holds until then, as soon as it is known which red flag it is. */
export function FlagRowSays({ row }: { readonly row: Said }): ReactNode {
  return (
    <p role="status">
      <Now>{reachWords[row.level]}</Now> Until somebody is reached:{" "}
      {row.untilReached ?? "no row says what to do"}.
    </p>
  );
}
