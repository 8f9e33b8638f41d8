import type { SignedIn } from "#app/_trpc/server.ts";

type Queue = Awaited<ReturnType<SignedIn["api"]["review"]["queue"]>>;

/** A tube that waits for a physician, as the API answers with it. */
export type QueueLine = Queue["lines"][number];
