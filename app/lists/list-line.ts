import type { SignedIn } from "#app/_trpc/server.ts";

type Lists = SignedIn["api"]["list"];

/** A page of Exchanges, and a day's list, as the API answers them. */
export type DuePage = Awaited<ReturnType<Lists["exchanges"]>>;
export type TodayPage = Awaited<ReturnType<Lists["today"]>>;

/** The filter under which they stand. */
export type AskedFilter = DuePage["asked"];

/** One open step in a list: what, whose, of which tube, and who has it today. */
export type ListLine = DuePage["lines"][number];
