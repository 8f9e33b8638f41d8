import { act, call, check, person, type Story, tube } from "#seed-demo/story.ts";

/** Handed over and accepted by a named person: the record ends here. */
export const takenElsewhere: Story = {
  patient: person("Parcelgate", "Tancred", {
    number: "004766",
    birthOn: "11 feb 1976",
    telephones: "555 0145",
  }),
  acts: [
    tube(70, "drain", { kind: "tunnelled peritoneal drain", size: "15 f", retention: "cuff" }),
    call(68, "Two litres a session."),
    check(42, "drain", { finding: "Cuff healed in." }),
    act(20, {
      form: "handed over",
      tube: "drain",
      texts: { to: "the home care team in Fernhollow", person: "Nurse Willowpatch" },
    }),
    act(16, {
      form: "accepted elsewhere",
      tube: "drain",
      texts: { by: "Nurse Willowpatch", place: "Fernhollow", how: "by letter" },
    }),
  ],
};
