import { act, call, person, type Story, tube } from "#seed-demo/story.ts";

/** In hospice: a clinician decided which calls and exchanges go on, with which team, until when. */
export const inHospice: Story = {
  patient: person("Evenholt", "Marigold", {
    number: "004739",
    birthOn: "29 jul 1941",
    telephones: "555 0109",
    alternateName: "Jonquil, daughter",
    alternateTelephone: "555 0110",
    alternateMayBeTold: "yes",
  }),
  acts: [
    tube(66, "right", { kind: "external biliary drain", side: "r", size: "8 f", retention: "locking loop" }),
    call(64, "Comfortable."),
    act(18, { form: "conditions noted", texts: { hospice: "yes", toldBy: "the family doctor" } }),
    act(15, {
      by: "physician",
      form: "hospice decided",
      texts: {
        calls: "go on",
        exchanges: "stop",
        until: "+24",
        decidedBy: "Petra Physick",
        team: "the home hospice team",
      },
    }),
    call(8, "Daughter spoken to. Bag changed by the hospice team."),
  ],
};
