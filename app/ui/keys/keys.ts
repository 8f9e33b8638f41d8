import { BOOK_VISIT_ID } from "#app/ui/book-visit-id.ts";
import { FINDER_ID } from "#app/ui/finder-id.ts";

/** Every key of the program; the page of keys shows them. From anywhere, `to` is the page that a key leads to, `field` what it focuses, `link` what it follows where the page has it. */
export const keys: readonly {
  readonly key: string;
  readonly where: string;
  readonly does: string;
  readonly to?: string;
  readonly field?: string;
  readonly link?: string;
  /** Works in a field too: no letter is typed by it. */
  readonly whileTyping?: boolean;
}[] = [
  {
    key: "/",
    where: "anywhere",
    does: "find a patient by name, number, birth date or telephone",
    field: FINDER_ID,
  },
  { key: "v", where: "on a patient or a tube", does: "book a visit: three slots", link: BOOK_VISIT_ID },
  {
    key: "F2",
    where: "on a patient, a tube or its call, also while typing",
    does: "the same; what was typed is kept",
    link: BOOK_VISIT_ID,
    whileTyping: true,
  },
  { key: "[", where: "in a review", does: "the tube before it in the queue", link: "queue-before" },
  { key: "]", where: "in a review", does: "the tube after it in the queue", link: "queue-after" },
  { key: "[", where: "in a day of visits", does: "the day before", link: "day-before" },
  { key: "]", where: "in a day of visits", does: "the day after", link: "day-after" },
  { key: "{", where: "in visits", does: "a week before", link: "week-before" },
  { key: "}", where: "in visits", does: "a week after", link: "week-after" },
  { key: ".", where: "in visits", does: "today, or this week", link: "day-today" },
  { key: "=", where: "in visits", does: "from the day to its week, and back", link: "day-or-week" },
  {
    key: "Arrows",
    where: "in visits",
    does: "down and up from one visit or free time to the next, left and right from room to room; Enter opens it",
  },
  { key: "Arrows", where: "in calls", does: "down and up from one line to the next; Enter opens its call" },
  { key: "?", where: "anywhere", does: "this page", to: "/keys" },
  { key: "Enter", where: "in a form", does: "saves; not in a long text or an open list" },
  { key: "Escape", where: "in a form", does: "leaves it; what was typed is kept for 7 days" },
  { key: "Tab", where: "anywhere", does: "to the next field, link or button; with Shift to the one before" },
];
