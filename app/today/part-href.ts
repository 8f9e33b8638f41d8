import { listHref } from "#app/lists/filter-address.ts";
import type { FilterTexts } from "#shared/record/list-filter.ts";
import type { DayPart } from "#shared/step/day-part.ts";

/** The address of one part of Today by itself: a page of it, counted from 1, under a filter. */
export const partHref = (part: DayPart, filter: FilterTexts = {}, page = 1): string =>
  listHref(`/today/${part}`, filter, page === 1 ? {} : { page: String(page) });
