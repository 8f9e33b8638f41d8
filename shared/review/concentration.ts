declare const unit: unique symbol;

/**
 * How much of an analyte is in a fluid: whole billionths of the analyte's own unit, so that whatever is typed with three decimals in any of its
 * units is exact.
 */
export type Concentration = number & { readonly [unit]: "1e-9 of the analyte's unit" };

const DECIMALS = 9;
const PLAIN = /^(\d*)\.?(\d*)$/;

/** Decimal text as a whole number over a power of ten. */
function scaled(decimal: string): { readonly digits: bigint; readonly decimals: number } {
  const [, whole = "", fraction = ""] = PLAIN.exec(decimal) ?? [];
  return { digits: BigInt(whole + fraction), decimals: fraction.length };
}

/**
 * `exactConcentration("5", "17.104")` is 5 of a unit of which each is 17.104 of the own one: 85.52, to the last digit. Undefined where the text is no plain
 * decimal, is finer than a billionth, or is too large to count.
 */
export function exactConcentration(figure: string, inOwn = "1"): Concentration | undefined {
  if (!/\d/.test(figure) || !PLAIN.test(figure)) return undefined;
  const [typed, factor] = [scaled(figure), scaled(inOwn)];
  const all = typed.digits * factor.digits * 10n ** BigInt(DECIMALS);
  const over = 10n ** BigInt(typed.decimals + factor.decimals);
  const count = Number(all / over);
  return all % over === 0n && Number.isSafeInteger(count) ? (count as Concentration) : undefined;
}

/** A value written in code or in a test, in the own unit: `concentration(85.52)`. Throws RangeError on one that is not exact. */
export function concentration(figure: number, inOwn = "1"): Concentration {
  const exact = exactConcentration(String(figure), inOwn);
  if (exact === undefined) throw new RangeError(`no exact concentration: ${figure} x ${inOwn}`);
  return exact;
}

/** The figure in the own unit, as a float: to print and to ask about, never to compare or to store. */
export const inOwnUnit = (level: Concentration): number => level / 10 ** DECIMALS;
