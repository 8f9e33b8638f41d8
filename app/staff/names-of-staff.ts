import type { NameOf } from "#shared/words/sentence.ts";

/** Names by id, closed accounts included: what they did stays theirs. */
export const namesOfStaff = (
  staff: readonly { readonly id: string; readonly fullName: string }[],
): NameOf => {
  const names = new Map(staff.map(({ id, fullName }) => [id, fullName]));
  return (id) => names.get(id) ?? "somebody whose account is gone";
};
