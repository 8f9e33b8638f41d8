import { flagHref } from "#app/flags/flag-pages.ts";
import type { Book, Frame } from "#app/ui/page-frame.tsx";
import type { ClinicView } from "#server/clinic-view.ts";
import type { Session } from "#server/sign-in/session.ts";
import { sessionLeft } from "#server/sign-in/session-left.ts";
import { may, type Procedure } from "#shared/access/may.ts";
import type { Instant } from "#shared/day/instant.ts";
import { printDay } from "#shared/day/print-day.ts";
import { roleWords } from "#shared/words/roles.ts";
import { type UnhandedFlag, unhandedLine } from "#shared/words/unhanded-flags.ts";

function standingLines({ isDemo, daysAhead, isExample }: ClinicView): readonly string[] {
  const lines: string[] = [];
  if (isDemo) lines.push("A demonstration: this clinic and everyone in it are invented.");
  if (daysAhead > 0) lines.push(`Its clock is ${daysAhead} ${daysAhead === 1 ? "day" : "days"} ahead.`);
  if (isExample)
    lines.push("EXAMPLE: the protocol's figures are nobody's until an approver of this clinic dates them.");
  return lines;
}

/** What is opened now and then and not daily, each with the procedure that it asks; those of everyone's ask none. */
const books: readonly (Book & { readonly asks: Procedure | null })[] = [
  {
    href: "/sizes",
    word: "Sizes",
    says: "one size in every unit of the trade, and what passes through what",
    asks: null,
  },
  {
    href: "/shelf",
    word: "Shelf",
    says: "wires, needles, dilators, tubes, sheaths and extensions that the clinic has",
    asks: "shelf.view",
  },
  {
    href: "/protocol",
    word: "Protocol",
    says: "the rows by which dates are counted and alarms raised, with version and approver",
    asks: "protocol.view",
  },
  {
    href: "/dates",
    word: "Proposed dates",
    says: "what a newer table or calendar would move, until somebody confirms it",
    asks: "proposal.list",
  },
  {
    href: "/calendar",
    word: "Calendar",
    says: "on which days the clinic is open, closed, or open for half a day",
    asks: "calendar.view",
  },
  {
    href: "/rooms",
    word: "Rooms",
    says: "what each room can do, when it is staffed, and what stays free for urgent visits",
    asks: "rooms.view",
  },
  {
    href: "/import",
    word: "Bring in a list",
    says: "a sheet of tubes that were followed elsewhere, row by row",
    asks: "sheet.list",
  },
  {
    href: "/visits/hospital-list",
    word: "Hospital's bookings",
    says: "a sheet of visits that the hospital booked, matched to tubes row by row",
    asks: "visit.hospitalBrought",
  },
  {
    href: "/figures",
    word: "Figures",
    says: "what is in place, who was reached at which attempt, how long red flags waited, how records ended",
    asks: "figure.view",
  },
  { href: "/staff", word: "Staff", says: "who has or had an account", asks: "staff.list" },
  {
    href: "/clinic",
    word: "Clinic",
    says: "what papers say of the clinic: its name and the telephone that patients ring",
    asks: "clinic.view",
  },
  {
    href: "/audit",
    word: "Who saw and did what",
    says: "looks and acts of everybody, the newest first",
    asks: "list.whoSawWhat",
  },
  {
    href: "/export",
    word: "Export",
    says: "all that is recorded, as files to take away",
    asks: "export.file",
  },
  { href: "/keys", word: "Keys", says: "which keys do what", asks: null },
];

/** Leads to the one that has waited longest. */
function unhandedOf(flags: readonly UnhandedFlag[], { today }: ClinicView): Frame["unhanded"] {
  const says = unhandedLine(flags, today);
  const [oldest] = flags;
  return says === null || oldest === undefined
    ? null
    : { says, href: flagHref(oldest.patientId, oldest.flagId) };
}

type Around = { readonly clinic: ClinicView; readonly unhanded: readonly UnhandedFlag[] };

/** What stands on every page, for this session. */
export const frameOf = ({ clinic, unhanded }: Around, session: Session, at: Instant): Frame => ({
  clinic: clinic.name,
  today: printDay(clinic.today),
  standing: standingLines(clinic),
  isExample: clinic.isExample,
  unhanded: unhandedOf(unhanded, clinic),
  person: {
    userName: session.person.userName,
    name: session.person.fullName,
    role: roleWords(session.person),
  },
  session: sessionLeft(session, at),
  books: books
    .filter(({ asks }) => asks === null || may(session.person, asks))
    .map(({ href, word, says }) => ({ href, word, says })),
});
