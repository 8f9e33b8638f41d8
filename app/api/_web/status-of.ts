import type { RefusalCode } from "#shared/errors/codes.ts";

/** The HTTP status of a refusal; 422 for what can be mended in the entry. */
export function statusOf(code: RefusalCode | undefined): number {
  switch (code) {
    case "sign-in-wrong":
    case "not-signed-in":
    case "session-ended":
      return 401;
    case "request-from-elsewhere":
    case "not-allowed":
      return 403;
    case "body-too-long":
    case "file-too-large":
      return 413;
    case "sign-in-refused":
      return 429;
    case "database-missing":
    case "database-not-one":
    case "database-damaged":
    case "database-read-only":
    case "database-busy":
    case "database-older":
    case "database-newer":
      return 503;
    default:
      return 422;
  }
}
