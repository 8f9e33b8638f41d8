/** Bound to this host, https (or loopback) and the whole site: the prefix makes browsers insist on all three. */
const NAME = "__Host-dwellbook";
/** Lax: a link from elsewhere finds the session. What changes anything is refused from elsewhere by its origin. */
const ALWAYS = "Path=/; Secure; HttpOnly; SameSite=Lax";

/** The token that a browser sends; null when it sends none. */
export function tokenIn(headers: Headers): string | null {
  const pairs = (headers.get("cookie") ?? "").split(";").map((pair) => pair.trim());
  const own = pairs.find((pair) => pair.startsWith(`${NAME}=`));
  return own === undefined ? null : own.slice(NAME.length + 1);
}

/** A `Set-Cookie` that lasts until the browser is closed; when the session ends is the server's to say. */
export const keepToken = (token: string): string => `${NAME}=${token}; ${ALWAYS}`;

export const forgetToken = (): string => `${NAME}=; ${ALWAYS}; Max-Age=0`;
