import type { SignedIn } from "#app/_trpc/server.ts";

/** A patient's page, as the API answers it. */
export type PatientPage = Awaited<ReturnType<SignedIn["api"]["patient"]["view"]>>;
