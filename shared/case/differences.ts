import { isNamed, type Json } from "#shared/case/json.ts";

/** Where an expectation and what came out do not agree: `steps.left exchange.latest`. `got` is null where nothing came out. */
export type Difference = { readonly at: string; readonly expected: Json; readonly got: Json };

const within = (at: string, name: string | number): string => (at === "" ? String(name) : `${at}.${name}`);

/**
 * Holds an expectation against what came out: only what is expected is looked at. Names may be fewer than came out, a list must
 * be whole and in order, and an expected null is "nothing".
 */
export function differences(expected: Json, got: Json | undefined, at = ""): readonly Difference[] {
  if (isNamed(expected) && isNamed(got))
    return Object.entries(expected).flatMap(([name, value]) =>
      differences(value, Object.hasOwn(got, name) ? got[name] : undefined, within(at, name)),
    );
  if (Array.isArray(expected) && Array.isArray(got) && expected.length === got.length)
    return expected.flatMap((value: Json, n) => differences(value, got[n], within(at, n)));
  const same = expected === (got ?? null);
  return same ? [] : [{ at, expected, got: got ?? null }];
}
