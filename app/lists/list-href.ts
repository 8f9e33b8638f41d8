import type { StepList } from "#shared/step/work-list.ts";

/** The address of a list, without its filter. */
export const ownListHref = (list: StepList): string =>
  list === "exchanges" ? "/exchanges" : `/lists/${list}`;

/** Its address as a file. */
export const listFileHref = (list: StepList): string => `/api/lists/${list}`;
