import { createTRPCClient, httpLink } from "@trpc/client";
import type { AppRouter } from "#server/api/router.ts";

/** The API in the browser. Queries go by POST too: what they ask for may name a patient, and addresses are logged. */
export const api = createTRPCClient<AppRouter>({
  links: [httpLink({ url: "/api/trpc", methodOverride: "POST" })],
});
