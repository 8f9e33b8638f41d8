import { act, call, person, type Story, tube } from "#seed-demo/story.ts";

/** One patient under two numbers: somebody has to find out which entries belong together. */
export const onePatientTwoNumbers: Story = {
  patient: person("Doublefern", "Hesper", {
    number: "004748",
    birthOn: "9 apr 1973",
    telephones: "555 0123",
    secondNumber: "F-2209",
    secondIssuer: "Fernhollow",
  }),
  acts: [
    tube(33, "right", {
      kind: "cholecystostomy",
      size: "8 f",
      route: "transhepatic",
      retention: "locking loop",
    }),
    call(31, "No pain."),
    act(12, { form: "flushed", tube: "right", texts: { went: "easily", given: "5", cameBack: "no" } }),
    call(11, "Well."),
    act(3, {
      form: "reconcile asked",
      texts: {
        about: "two records of one patient",
        says: "Fernhollow has a record F-2209 with a check that is not here.",
      },
    }),
  ],
};
