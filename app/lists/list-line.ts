import type { SignedIn } from "#app/_trpc/server.ts";

type Lists = SignedIn["api"]["list"];

/** A page of Exchanges, and a day's list, as the API answers them. */
export type DuePage = Awaited<ReturnType<Lists["exchanges"]>>;
export type TodayPage = Awaited<ReturnType<Lists["today"]>>;

/** A list by what is to be done, and all of them with their counts. */
export type WorkListPage = Awaited<ReturnType<Lists["work"]>>;
export type AllListsPage = Awaited<ReturnType<Lists["all"]>>;

/** A filter that somebody saved, of one list. */
export type SavedFilter = WorkListPage["saved"][number];

/** The filter under which they stand. */
export type AskedFilter = DuePage["asked"];

/** One open step in a list: what, whose, of which tube, and who has it today. */
export type ListLine = DuePage["lines"][number];
