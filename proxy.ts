import { type NextRequest, NextResponse } from "next/server";

/** The policy of a page: own files only, scripts by nonce, no frame around it, forms to itself. */
function pagePolicy(nonce: string): string {
  const development = process.env.NODE_ENV === "development";
  return [
    "default-src 'self'",
    `script-src 'nonce-${nonce}' 'strict-dynamic'${development ? " 'unsafe-eval'" : ""}`,
    `style-src 'self' ${development ? "'unsafe-inline'" : `'nonce-${nonce}'`}`,
    // Drawings place their parts with style attributes; an attribute can hold no script.
    "style-src-attr 'unsafe-inline'",
    "img-src 'self' data:",
    "object-src 'none'",
    "base-uri 'none'",
    "form-action 'self'",
    "frame-ancestors 'none'",
  ].join("; ");
}

/** Gives each page its own nonce; the framework reads it from the request's policy and puts it on its scripts. */
export function proxy(request: NextRequest): NextResponse {
  const policy = pagePolicy(btoa(crypto.randomUUID()));
  const headers = new Headers(request.headers);
  headers.set("Content-Security-Policy", policy);
  headers.set("x-asked-path", request.nextUrl.pathname + request.nextUrl.search);
  const response = NextResponse.next({ request: { headers } });
  response.headers.set("Content-Security-Policy", policy);
  return response;
}

export const config = { matcher: ["/((?!api/|_next/static/|icon.svg).*)"] };
