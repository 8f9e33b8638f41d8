import { act, call, correct, person, type Story, tube } from "#seed-demo/story.ts";

/** Told dead, and taken back on the same day: everything stands as before. */
export const toldDeadInError: Story = {
  patient: person("Winterbobbin", "Osric", {
    number: "004740",
    birthOn: "20 apr 1937",
    telephones: "555 0111",
  }),
  acts: [
    tube(40, "left", { kind: "pcn l", size: "8 f", retention: "locking loop", cancerObstruction: "yes" }),
    call(38, "Well."),
    act(5, { form: "died", entry: "death", texts: { when: "-1", toldBy: "a ward clerk" } }),
    correct(5, { at: "15:30", form: "undone", of: "death", texts: {} }),
    call(5, "Alive and well; it was another patient of the ward."),
    call(3, "Forgives the mistake. The exchange date stands."),
  ],
};
