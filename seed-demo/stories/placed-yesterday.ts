import { person, type Story, tube } from "#seed-demo/story.ts";

/** Placed yesterday: the first call is due. */
export const placedYesterday: Story = {
  patient: person("Nettlesby", "Gideon", {
    number: "004728",
    birthOn: "27 feb 1963",
    telephones: "555 0181",
  }),
  acts: [tube(1, "left", { kind: "pcn l", size: "8 f", takes: ".035 in", retention: "locking loop" })],
};
