import type { Bore, Place } from "#shared/fit/inside.ts";
import type { ShelfColumn } from "#shared/shelf/shelf-columns.ts";
import type { NewShelfType } from "#shared/shelf/shelf-type.ts";
import { boreText, typeTexts } from "#shared/shelf/type-texts.ts";

const boreAt = (bores: readonly Bore[], place: Place): string => {
  const bore = bores.find((each) => each.place === place);
  return bore === undefined ? "" : boreText(bore);
};

/** A type as a row of a sheet: reading the row again gives the same type. What nobody knows is blank. */
export function shelfCells(type: NewShelfType): Readonly<Record<ShelfColumn, string>> {
  const texts = typeTexts(type);
  const text = (field: string): string => texts[field] ?? "";
  const { bores } = type;
  return {
    sort: text("sort"),
    name: text("name"),
    outside: text("outside"),
    tolerance: text("tolerance"),
    takes: text("takes"),
    takesDevice: text("takesDevice"),
    hub: boreAt(bores, "hub"),
    shaft: boreAt(bores, "shaft"),
    endHoleInside: boreAt(bores, "end hole"),
    valve: boreAt(bores, "valve"),
    stopcock: boreAt(bores, "stopcock"),
    length: text("length"),
    endHole: text("endHole"),
    retention: text("retention"),
    kinds: text("kinds"),
    certainty: text("certainty"),
  };
}
