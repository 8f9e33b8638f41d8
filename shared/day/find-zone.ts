import { isZone, type Zone } from "#shared/day/instant.ts";

const plain = (text: string): string => text.trim().toLowerCase().replaceAll("_", " ");
const cityOf = (zone: string): string => plain(zone.split("/").at(-1) ?? zone);

/** A time zone by its whole name or by its city alone, in any letters: `america/denver`, `Denver`. Null where none is meant, or more than one. */
export function findZone(text: string): Zone | null {
  const zones = Intl.supportedValuesOf("timeZone");
  const whole = zones.find((zone) => plain(zone) === plain(text)) ?? text.trim();
  if (isZone(whole)) return whole;
  const [found, ...more] = zones.filter((zone) => cityOf(zone) === plain(text));
  return found !== undefined && more.length === 0 && isZone(found) ? found : null;
}
