import type { NextResponse } from "next/server";

/** What the sign-in page has to say after a form that was refused. Never the password, and never in an address. */
export type Said = { readonly sentence: string; readonly userName: string };

export const SAID_COOKIE = "__Host-said";

const LONGEST_NAME = 100;

/** For the page that is loaded next, and gone soon after. */
export function setSaid(response: NextResponse, { sentence, userName }: Said): void {
  const value = JSON.stringify({ sentence, userName: userName.slice(0, LONGEST_NAME) });
  response.cookies.set(SAID_COOKIE, value, {
    httpOnly: true,
    secure: true,
    sameSite: "strict",
    path: "/",
    maxAge: 20,
  });
}
