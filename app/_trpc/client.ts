import { createTRPCClient, httpLink } from "@trpc/client";
import type { AppRouter } from "#server/api/router.ts";

/** A browser lets go of what is longer than 64 KiB, all such requests together, when a page is left. */
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
