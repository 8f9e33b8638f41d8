import { act, call, person, type Story, tube } from "#seed-demo/story.ts";

/** Transferred with the size unknown: the wire check cannot tell, and names what is to be found out. */
export const sizeUnknown: Story = {
  patient: person("Wicketmarsh", "Thaddeus", {
    number: "004738",
    birthOn: "2 jan 1954",
    telephones: "555 0108",
  }),
  acts: [
    tube(20, "right", { kind: "pcn r", size: "?", when: "-26", from: "a hospital in Fernhollow" }),
    act(20, {
      at: "10:20",
      form: "transferred",
      tube: "right",
      texts: {
        place: "a hospital in Fernhollow",
        findOut: "size, what wire it takes, what holds it",
        askWhom: "their theater desk",
      },
    }),
    act(9, {
      form: "facts noted",
      tube: "right",
      texts: { retention: "locking loop", toldBy: "their theater desk" },
    }),
    act(9, {
      at: "10:30",
      form: "exchange planned",
      tube: "right",
      texts: { on: "+50", wire: ".035 in", size: "10 f", takes: ".038 in" },
    }),
    call(8, "Well, the bag fills."),
  ],
};
