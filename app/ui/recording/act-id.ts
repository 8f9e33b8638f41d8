/** A new act id: 128 random bits as 22 letters, digits, `-` and `_`. Made once a form, so that sending twice enters once. */
export function newActId(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  return btoa(String.fromCharCode(...bytes))
    .replaceAll("+", "-")
    .replaceAll("/", "_")
    .replaceAll("=", "");
}
