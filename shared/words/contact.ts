import type { Contact } from "#shared/record/patient/patient-details.ts";

/** "555 0117 (mornings); 555 0118". Null where none is recorded. */
export const telephonesText = ({ telephones }: Contact): string | null =>
  telephones.length === 0
    ? null
    : telephones
        .map(({ number, bestTimes }) => (bestTimes === null ? number : `${number} (${bestTimes})`))
        .join("; ");

/** Whether the patient allows that somebody is told. */
export const mayBeToldText = (mayBeTold: boolean | null): string => {
  if (mayBeTold === null) return "nobody has asked whether they may be told";
  return mayBeTold ? "may be told" : "may not be told";
};

/** Whether the patient allows it is said, also that nobody has asked. */
export function alternateText({ alternate: other }: Pick<Contact, "alternate">): string | null {
  if (other === null) return null;
  return [other.name, other.telephone, mayBeToldText(other.mayBeTold)]
    .filter((part) => part !== null)
    .join(", ");
}
