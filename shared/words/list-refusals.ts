import type { RefusalCode } from "#shared/errors/codes.ts";
import type { RefusalArgs } from "#shared/errors/refusal.ts";

/** What is to mend in how somebody looks at lists. */
export const listRefusals = {
  "filter-shows-all": () => "No filter is in force, so nothing is there to save. Choose what is shown first.",
  "filter-name-taken": ({ name, list }) =>
    `You have a filter "${name}" already, of the list ${list}. Choose another name, or drop that one first.`,
  "own-order-full": ({ most }) =>
    `${most} lines stand in your order already. Put one back to the list's own order first.`,
} satisfies Partial<Record<RefusalCode, (args: RefusalArgs) => string>>;
