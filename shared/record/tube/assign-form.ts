import { onDay } from "#shared/day/when.ts";
import { choiceField } from "#shared/record/field/choice-field.ts";
import { type EntryOf, type FormContext, form } from "#shared/record/form.ts";
import { ownerRoles, stepKinds } from "#shared/tube/step-kinds.ts";
import { roleNames } from "#shared/words/roles.ts";
import { stepNames } from "#shared/words/steps.ts";

const steps = stepKinds.map((value) => ({ value, label: stepNames[value] }));

const ANY = "any";

/** Roles first, then people by name. A value is a role, or a role and the id of a person. */
const owners = ({ staff }: FormContext) => [
  ...ownerRoles.map((role) => ({ value: `${ANY} ${role}`, label: roleNames[role] })),
  ...staff.map(({ id, fullName, role }) => ({ value: id, label: `${fullName}, ${roleNames[role]}` })),
];

/** Give a step to a role or a person. */
export const assignForm = form({
  fields: (context: FormContext) => ({
    step: choiceField({ label: "Step", what: "which step" }, steps),
    owner: choiceField({ label: "Goes to", what: "who does it" }, owners(context)),
  }),
  entry: ({ step, owner }, { today, staff }): EntryOf<"step assigned"> => {
    const person = staff.find(({ id }) => id === owner);
    const role = person?.role ?? ownerRoles.find((name) => owner === `${ANY} ${name}`) ?? "nurse";
    return {
      kind: "step assigned",
      when: onDay(today),
      time: null,
      payload: { step, owner: person === undefined ? { role } : { role, staffId: person.id } },
    };
  },
});
