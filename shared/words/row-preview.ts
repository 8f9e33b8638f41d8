import type { PatientDetails } from "#shared/record/patient/patient-details.ts";
import { FROM_THE_LIST } from "#shared/sheet/from-the-list.ts";
import { kindOf } from "#shared/tube/kind/kinds.ts";
import type { Payload } from "#shared/tube/payloads.ts";
import { alternateText, telephonesText } from "#shared/words/contact.ts";
import { factPhrases } from "#shared/words/facts.ts";

type Said = string | null | false;

const said = (...parts: readonly Said[]): readonly string[] =>
  parts.filter((part): part is string => typeof part === "string" && part !== "");

const behind = (what: string, text: string | null): Said => text !== null && `${what} ${text}`;

/** What goes for every row that says nothing else, so that no row repeats it. */
export const unsaidSentence = (issuer: string): string =>
  `Where a row shows nothing else, its record number is issued by ${issuer}, and its tube has the role, mode and organ that are usual for the kind and was taken over from ${FROM_THE_LIST}, told by others. Everything that is not shown is unknown.`;

/** "004711", or "004711 (Saltmarsh)" where the list's own issuer did not give it. */
export const numberText = (
  { value, issuer }: PatientDetails["identifiers"][number],
  listIssuer: string,
): string => (issuer === listIssuer ? value : `${value} (${issuer})`);

/** What a row says of its patient beside name, first number and birth date. */
export function patientSays(details: PatientDetails, listIssuer: string): readonly string[] {
  const { contact, language, needsInterpreter, identifiers } = details;
  const [, second] = identifiers;
  return said(
    second !== undefined && `second number ${numberText(second, listIssuer)}`,
    behind("telephone", telephonesText(contact) ?? "unknown"),
    language !== "" && `speaks ${language}`,
    needsInterpreter !== null && (needsInterpreter ? "needs an interpreter" : "needs no interpreter"),
    behind("alternate contact", alternateText(contact)),
    behind("home nurse", contact.homeNurse),
    behind("referrer", contact.referrer),
    behind("family doctor", contact.familyDoctor),
    behind("responsible service", contact.responsibleService),
  );
}

/** What a row says of its tube beside its name, its clocks, its plan and its note. */
export function tubeSays(opening: Payload<"taken over">): readonly string[] {
  const { side, facts, role, mode, organ, from } = opening;
  // The tube's name says these two.
  const { size: _size, retention: _retention, ...others } = facts;
  const usual = kindOf(opening.kind);
  return said(
    side.certainty === "estimated" && "side estimated",
    ...factPhrases(others, "plain", "left out"),
    opening.cavity,
    organ !== usual.organ && behind("organ", organ),
    opening.route,
    opening.indication,
    role !== usual.role && `role ${role}`,
    mode !== usual.mode && `mode ${mode}`,
    from !== FROM_THE_LIST && `from ${from ?? "an unknown place"}`,
  );
}
