import type { FactRow } from "#app/facts/fact-list.tsx";
import type { Contact } from "#shared/record/patient/patient-details.ts";
import { alternateText, telephonesText } from "#shared/words/contact.ts";

type Reached = {
  readonly contact: Contact;
  readonly language: string;
  readonly needsInterpreter: boolean | null;
};

const interpreterText = (needed: boolean | null): string | null =>
  needed === null ? null : needed ? "needed" : "not needed";

/** How a patient is reached, and who else looks after them. */
export const contactRows = ({ contact, language, needsInterpreter }: Reached): readonly FactRow[] => [
  { word: "Telephones", says: telephonesText(contact) },
  ...(contact.livesIn === undefined ? [] : [{ word: "Time zone", says: contact.livesIn }]),
  { word: "Language", says: language === "" ? null : language },
  { word: "Interpreter", says: interpreterText(needsInterpreter) },
  { word: "Alternate contact", says: alternateText(contact) },
  { word: "Home nurse", says: contact.homeNurse },
  { word: "Referrer", says: contact.referrer },
  { word: "Family doctor", says: contact.familyDoctor },
  { word: "Responsible service", says: contact.responsibleService },
];
