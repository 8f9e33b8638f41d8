import type { FactRow } from "#app/facts/fact-list.tsx";
import type { Contact } from "#shared/record/patient/patient-details.ts";

type Reached = {
  readonly contact: Contact;
  readonly language: string;
  readonly needsInterpreter: boolean;
};

const telephones = ({ telephones: numbers }: Contact): string | null =>
  numbers.length === 0
    ? null
    : numbers
        .map(({ number, bestTimes }) => (bestTimes === null ? number : `${number} (${bestTimes})`))
        .join("; ");

/** Whether the patient allows it is said, also that nobody has asked. */
function alternate({ alternate: other }: Contact): string | null {
  if (other === null) return null;
  const told =
    other.mayBeTold === null
      ? "nobody has asked whether they may be told"
      : other.mayBeTold
        ? "may be told"
        : "may not be told";
  return [other.name, other.telephone, told].filter((part) => part !== null).join(", ");
}

/** How a patient is reached, and who else looks after them. */
export const contactRows = ({ contact, language, needsInterpreter }: Reached): readonly FactRow[] => [
  { word: "Telephones", says: telephones(contact) },
  {
    word: "Language",
    says: language === "" ? null : `${language}${needsInterpreter ? ", needs an interpreter" : ""}`,
  },
  { word: "Alternate contact", says: alternate(contact) },
  { word: "Home nurse", says: contact.homeNurse },
  { word: "Referrer", says: contact.referrer },
  { word: "Family doctor", says: contact.familyDoctor },
  { word: "Responsible service", says: contact.responsibleService },
];
