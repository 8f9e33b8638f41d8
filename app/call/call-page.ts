import type { SignedIn } from "#app/_trpc/server.ts";

/** What a call is made with, as the API answers it. */
export type CallPage = Awaited<ReturnType<SignedIn["api"]["calls"]["view"]>>;
