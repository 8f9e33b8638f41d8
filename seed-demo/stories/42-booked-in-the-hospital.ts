import { call, person, type Story, tube, visit } from "#seed-demo/story.ts";

/** Booked in the hospital's own system: it counts as booked here. */
export const bookedInTheHospital: Story = {
  patient: person("Tarnwhistle", "Rosamund", { number: "004791", birthOn: "14 jul 1959" }),
  acts: [
    tube(66, "right", { kind: "pcn r", size: "8 f", takes: ".035 in", retention: "locking loop" }),
    call(64, "Well, clear urine."),
    visit(3, {
      form: "visit booked",
      visit: "elsewhere",
      tubes: [["right", "exchange"]],
      texts: { elsewhere: "Quillmere General, day unit", on: "+14", at: "10:00" },
    }),
  ],
};
