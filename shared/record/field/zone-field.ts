import { findZone } from "#shared/day/find-zone.ts";
import type { Zone } from "#shared/day/instant.ts";
import { parsed, unread } from "#shared/errors/refusal.ts";
import type { FieldWords } from "#shared/record/field/field-words.ts";
import type { FieldSpec } from "#shared/record/field-spec.ts";

/** A time zone, by its name or its city; blank is null. Refusal: `zone-unknown`. */
export const zoneField = (words: FieldWords): FieldSpec<Zone | null> => ({
  ...words,
  read: (text) => {
    if (text.trim() === "") return parsed(null);
    const zone = findZone(text);
    return zone === null ? unread("zone-unknown", { text: text.trim() }) : parsed(zone);
  },
  echo: (zone) => zone ?? "",
});
