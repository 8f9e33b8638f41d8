import { act, call, emptiedDaily, person, type Recording, type Story, tube } from "#seed-demo/story.ts";

/** What was voided in the 24 hours before, noted in the evening; of some days nobody asked. */
const voided = (daysAgo: number, ml: string): Recording =>
  act(daysAgo, {
    at: "19:30",
    by: "caller",
    form: "clinical state noted",
    texts: { voidedVolume: ml, toldBy: "his wife" },
  });

const urine = { characters: "urine-like", flushGiven: "none" };

/** Two nephrostomies and some urine the natural way: less by one is more by another, or less of all. */
export const leftRightAndVoided: Story = {
  patient: person("Rushwater-Tarn", "Lambert", {
    number: "004777",
    birthOn: "8 jun 1949",
    telephones: "555 0156",
  }),
  acts: [
    tube(12, "left", { kind: "pcn l", size: "8 f", takes: ".035 in", retention: "locking loop" }),
    tube(12, "right", { kind: "pcn r", size: "8 f", takes: ".035 in", retention: "locking loop" }),
    call(11, "Both run, a little urine by day."),
    call(11, "Both run."),
    ...emptiedDaily({ from: 8, word: "left" }, [980, 940, 900, 620, 880, 910, 890, 905, 895], urine),
    ...emptiedDaily({ from: 8, word: "right" }, [450, 470, 430, 410, 440, 420, 445, 430, 425], urine),
    voided(6, "250"),
    voided(5, "480"),
    voided(4, "230"),
    voided(2, "260"),
    voided(1, "?"),
  ],
};
