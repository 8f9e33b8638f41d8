import { createTRPCClient, httpLink } from "@trpc/client";
import type { AppRouter } from "#server/api/router.ts";

/** By the Fetch standard such requests hold 64 KiB at most, all of them together; a longer one would be refused. */
const OUTLIVES_PAGE_CHARS = 30_000;

/** What somebody typed and did not save goes out while the page is left: the request has to outlive it. */
const outlivesPage = (url: string, body: unknown): boolean =>
  url.includes("/draft.save") && typeof body === "string" && body.length < OUTLIVES_PAGE_CHARS;

/** The API in the browser. Queries go by POST too: what they ask for may name a patient, and addresses are logged. */
export const api = createTRPCClient<AppRouter>({
  links: [
    httpLink({
      url: "/api/trpc",
      methodOverride: "POST",
      fetch: (url, options) =>
        fetch(url, { ...(options as RequestInit), keepalive: outlivesPage(String(url), options?.body) }),
    }),
  ],
});
