import { DomainError } from "#shared/errors/refusal.ts";

/**
 * Throws `request-from-elsewhere` unless a page of this program sent the request: by what the browser itself says of the
 * sender, or, where it says nothing, by an origin with this host.
 */
export function refuseFromElsewhere(request: Request): void {
  const site = request.headers.get("sec-fetch-site");
  const own = site === null ? hasOwnOrigin(request.headers) : site === "same-origin";
  if (!own) throw new DomainError({ code: "request-from-elsewhere" });
}

function hasOwnOrigin(headers: Headers): boolean {
  const origin = headers.get("origin");
  return origin !== null && URL.canParse(origin) && new URL(origin).host === headers.get("host");
}
