/** Every key of the program; the page of keys shows them, and `to` is where a key leads from anywhere. */
export const keys: readonly {
  readonly key: string;
  readonly where: string;
  readonly does: string;
  readonly to?: string;
}[] = [
  { key: "/", where: "anywhere", does: "find a patient by name or number", to: "/patients" },
  { key: "?", where: "anywhere", does: "this page", to: "/keys" },
  { key: "Enter", where: "in a form", does: "saves; not in a long text or an open list" },
  { key: "Escape", where: "in a form", does: "leaves it; what was typed is kept for 7 days" },
  { key: "Tab", where: "anywhere", does: "to the next field, link or button; with Shift to the one before" },
];
