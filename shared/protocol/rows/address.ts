/**
 * Where a row stands: the path of its sort, and of one in a list behind a slash its name or its place, counted from 1:
 * "balloon", "intervals/nephrostomy", "calls.hours/morning", "outputRows.dry/2". The path of a list alone is the blank row after its last.
 */
export const addressOf = (path: string, key: string | number | null): string =>
  key === null ? path : `${path}/${key}`;

export type AddressParts = { readonly path: string; readonly key: string | null };

export function addressParts(address: string): AddressParts {
  const at = address.indexOf("/");
  return at < 0 ? { path: address, key: null } : { path: address.slice(0, at), key: address.slice(at + 1) };
}

const names = ["id", "kind", "rung", "part"] as const;

/** Which of these fields a row of a list is known by: its id, else its kind, what is tried or the part of the day; undefined where only its place tells it. */
export const nameField = (fields: readonly string[]): (typeof names)[number] | undefined =>
  names.find((name) => fields.includes(name));

/** By what a row of a list is known; null where only its place tells it. */
export function keyOf(row: object): string | null {
  const field = nameField(Object.keys(row));
  return field === undefined ? null : String(Reflect.get(row, field));
}
