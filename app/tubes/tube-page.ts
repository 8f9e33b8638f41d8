import type { SignedIn } from "#app/_trpc/server.ts";

type Tubes = SignedIn["api"]["tube"];

/** A tube's page and its output, as the API answers them. */
export type TubePage = Awaited<ReturnType<Tubes["view"]>>;
export type OutputPage = Awaited<ReturnType<Tubes["output"]>>;
export type UrinePage = Awaited<ReturnType<Tubes["urine"]>>;
