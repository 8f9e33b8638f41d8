import { type Parsed, parsed, unread } from "#shared/errors/refusal.ts";
import { type Microlitres, microlitres } from "#shared/output/microlitre.ts";
import { type Fact, unknownFact } from "#shared/tube/certainty.ts";

/** A typed volume, converted, with the words that it was told in: "2 oz" stays readable beside 59.1 mL. */
export type TypedVolume = { readonly volume: Fact<Microlitres>; readonly asSpoken: string };

/** An `amount` was measured or put in and is never negative; a `net` figure from another chart may be. */
export type VolumeField = "amount" | "net";

/** A US fluid ounce is 29.5735 mL (NIST Handbook 44, appendix C: 29.573 53). */
export const UL_PER_FLUID_OUNCE = 29_573.5;

/** Microlitres in each unit. */
const ulPer: Readonly<Record<string, number>> = {
  "": 1000,
  ml: 1000,
  mls: 1000,
  cc: 1000,
  millilitre: 1000,
  millilitres: 1000,
  milliliter: 1000,
  milliliters: 1000,
  l: 1_000_000,
  litre: 1_000_000,
  litres: 1_000_000,
  liter: 1_000_000,
  liters: 1_000_000,
  oz: UL_PER_FLUID_OUNCE,
  "fl oz": UL_PER_FLUID_OUNCE,
  ounce: UL_PER_FLUID_OUNCE,
  ounces: UL_PER_FLUID_OUNCE,
};

const LONGEST = 40;
/** No bag and no day comes near it; what lies between it and the clinic's row is asked, not refused. */
const ABSURD_UL = 100_000_000;
const VOLUME = /^(~?) ?([-−]?) ?(\d+(?:[.,]\d+)?|[.,]\d+) ?([a-z]*(?: oz)?)\.?$/;
/** What people measure by at home, and whose size nobody here knows. */
const VESSEL =
  /\b(?:bags?|bulbs?|bottles?|cups?|glass(?:es)?|mugs?|pots?|jugs?|(?:tea|table)?spoons?(?:ful)?s?)\b/;
const GROUPED = /^[1-9]\d{0,2},\d{3}$/;

/**
 * A volume as people type it: "35", "35 mL", "1.2 l", "2 oz", "~40" (estimated), "?" (unknown), "0". A bare number is mL.
 * "1,500" can be read two ways and is asked again; a decimal comma needs its unit.
 *
 * "Half a bag" is asked back: how much the bag holds is for whoever told it.
 *
 * Refusals: `volume-missing`, `volume-not-understood`, `volume-by-vessel`, `volume-comma-unclear`, `volume-needs-unit`, `volume-negative`,
 * `volume-absurd`.
 */
export function readVolume(entry: string, field: VolumeField): Parsed<TypedVolume> {
  const asSpoken = entry.trim();
  if (asSpoken === "") return unread("volume-missing");
  if (asSpoken === "?") return parsed({ volume: unknownFact, asSpoken });
  const text = asSpoken.slice(0, LONGEST);
  const match = VOLUME.exec(asSpoken.toLowerCase().replace(/\s+/g, " "));
  if (VESSEL.test(text.toLowerCase())) return unread("volume-by-vessel", { text });
  if (match === null || text !== asSpoken) return unread("volume-not-understood", { text });
  const [, about, minus, number = "", unit = ""] = match;
  const per = Object.hasOwn(ulPer, unit) ? ulPer[unit] : undefined;
  if (per === undefined) return unread("volume-not-understood", { text });
  if (GROUPED.test(number)) return unread("volume-comma-unclear", { text });
  if (unit === "" && number.includes(",")) return unread("volume-needs-unit", { text });
  const size = Math.round(Number(number.replace(",", ".")) * per);
  if (minus !== "" && size !== 0 && field === "amount") return unread("volume-negative", { text });
  if (size > ABSURD_UL) return unread("volume-absurd", { text, limit: "100 L" });
  const value = microlitres(minus === "" ? size : -size);
  return parsed({ volume: { certainty: about === "~" ? "estimated" : "confirmed", value }, asSpoken });
}
