import type { Frame } from "#app/ui/page-frame.tsx";
import type { ClinicView } from "#server/clinic-view.ts";
import type { Session } from "#server/sign-in/session.ts";
import { sessionLeft } from "#server/sign-in/session-left.ts";
import { may } from "#shared/access/may.ts";
import type { Instant } from "#shared/day/instant.ts";
import { printDay } from "#shared/day/print-day.ts";
import { roleWords } from "#shared/words/roles.ts";

function standingLines({ isDemo, daysAhead, isExample }: ClinicView): readonly string[] {
  const lines: string[] = [];
  if (isDemo) lines.push("A demonstration: this clinic and everyone in it are invented.");
  if (daysAhead > 0) lines.push(`Its clock is ${daysAhead} ${daysAhead === 1 ? "day" : "days"} ahead.`);
  if (isExample)
    lines.push("EXAMPLE: the protocol's figures are nobody's until an approver of this clinic dates them.");
  return lines;
}

/** Pages about the clinic itself, each with the procedure that it asks. */
const books = [
  { href: "/protocol", word: "Protocol", asks: "protocol.view" },
  { href: "/import", word: "Bring in a list", asks: "sheet.list" },
  { href: "/staff", word: "Staff", asks: "staff.list" },
  { href: "/clinic", word: "Clinic", asks: "clinic.view" },
  { href: "/audit", word: "Who saw and did what", asks: "list.whoSawWhat" },
  { href: "/export", word: "Export", asks: "export.file" },
] as const;

/** What stands on every page, for this session. */
export const frameOf = (clinic: ClinicView, session: Session, at: Instant): Frame => ({
  clinic: clinic.name,
  today: printDay(clinic.today),
  standing: standingLines(clinic),
  isExample: clinic.isExample,
  person: {
    userName: session.person.userName,
    name: session.person.fullName,
    role: roleWords(session.person),
  },
  session: sessionLeft(session, at),
  books: books.filter(({ asks }) => may(session.person, asks)).map(({ href, word }) => ({ href, word })),
});
