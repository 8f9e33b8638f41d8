import type { SignedIn } from "#app/_trpc/server.ts";

/** A list that waits, as the API answers it. */
export type ImportView = Awaited<ReturnType<SignedIn["api"]["sheet"]["view"]>>;
