import { act, call, callAt, person, type Story, tube } from "#seed-demo/story.ts";

/** In hospital for something else when the call is due: the ward is rung, and the tube's dates do not wait. */
export const inpatientAtCallTime: Story = {
  patient: person("Wardlebrook-Quill", "Selwyn", {
    number: "004751",
    birthOn: "5 may 1947",
    telephones: "555 0126",
  }),
  acts: [
    tube(63, "right", { kind: "pcn r", size: "8 f", takes: ".035 in", retention: "locking loop" }),
    call(61, "Well."),
    act(4, {
      at: "14:00",
      by: "caller",
      form: "whereabouts noted",
      texts: { place: "inpatient", where: "the hip ward in Fernhollow", toldBy: "a neighbor" },
    }),
    callAt(4, {
      at: "14:20",
      texts: {
        to: "the ward",
        outcome: "reached a carer",
        note: "The ward empties the bag; they have been told of the exchange date.",
      },
    }),
    act(3, {
      form: "conditions noted",
      texts: {
        bloodThinners: "an injection each evening",
        bloodThinnerReason: "after the hip operation",
        toldBy: "the ward",
      },
    }),
  ],
};
