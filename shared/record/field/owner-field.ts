import { type Parsed, parsed } from "#shared/errors/refusal.ts";
import { choiceField } from "#shared/record/field/choice-field.ts";
import type { FieldWords } from "#shared/record/field/field-words.ts";
import type { FieldSpec } from "#shared/record/field-spec.ts";
import type { StaffInForm } from "#shared/record/form.ts";
import { type OwnerRole, ownerRoles } from "#shared/tube/step-kinds.ts";
import { roleNames } from "#shared/words/roles.ts";

/** A role, or one person of it by name. */
export type TypedOwner = { readonly role: OwnerRole; readonly staffId?: string };

const ANY = "any";

/** Who does it: roles first, then people by name. */
export function ownerField(words: FieldWords, staff: readonly StaffInForm[]): FieldSpec<TypedOwner> {
  const choices = [
    ...ownerRoles.map((role) => ({ value: `${ANY} ${role}`, label: roleNames[role] })),
    ...staff.map(({ id, fullName, role }) => ({ value: id, label: `${fullName}, ${roleNames[role]}` })),
  ];
  const {
    read,
    echo: _label,
    doubt: _asks,
    ...shown
  } = choiceField({ ...words, what: "who does it" }, choices);
  return {
    ...shown,
    read: (text): Parsed<TypedOwner> => {
      const chosen = read(text);
      if (!chosen.ok) return chosen;
      const person = staff.find(({ id }) => id === chosen.value);
      if (person !== undefined) return parsed({ role: person.role, staffId: person.id });
      return parsed({ role: ownerRoles.find((role) => chosen.value === `${ANY} ${role}`) ?? "nurse" });
    },
  };
}
