const BASE = "http://dwellbook.invalid";

/** A path of this site from what a form sent, or the first page: a sign-in leads nowhere else. */
export function ownPath(wanted: string | null): string {
  if (wanted === null || !URL.canParse(wanted, BASE)) return "/";
  const url = new URL(wanted, BASE);
  return url.origin === BASE && wanted.startsWith("/") ? `${url.pathname}${url.search}` : "/";
}
