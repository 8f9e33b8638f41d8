import type { NextResponse } from "next/server";

/**
 * `__Host-`: this host only, whole site, https only. Browsers let it stand on http at localhost and 127.0.0.1 too, and drop it
 * silently anywhere else, so the sign-in page says there that https is needed.
 */
export const SESSION_COOKIE = "__Host-session";

const attributes = { httpOnly: true, secure: true, sameSite: "lax", path: "/" } as const;

/** Lasts until the browser is closed; the session's own limits stand in the table. */
export const setSession = (response: NextResponse, token: string): void => {
  response.cookies.set(SESSION_COOKIE, token, attributes);
};

export const clearSession = (response: NextResponse): void => {
  response.cookies.set(SESSION_COOKIE, "", { ...attributes, maxAge: 0 });
};
