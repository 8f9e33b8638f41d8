declare const unit: unique symbol;

/** A volume of fluid: whole microlitres, so that parts add up to their sum. Negative where more went in than came out. */
export type Microlitres = number & { readonly [unit]: "uL" };

export const UL_PER_ML = 1000;

/** The one maker. Throws RangeError on a number that is not whole. */
export function microlitres(count: number): Microlitres {
  if (!Number.isSafeInteger(count)) throw new RangeError(`not whole microlitres: ${count}`);
  return (count + 0) as Microlitres;
}

/** `millilitres(17.5)` is 17,500 uL; what is finer than a microlitre is rounded. */
export const millilitres = (ml: number): Microlitres => microlitres(Math.round(ml * UL_PER_ML));

export const toMl = (volume: Microlitres): number => volume / UL_PER_ML;

export const noVolume = microlitres(0);

export const sum = (volumes: readonly Microlitres[]): Microlitres =>
  microlitres(volumes.reduce((total, volume) => total + volume, 0));
