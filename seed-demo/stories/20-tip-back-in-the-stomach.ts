import { act, call, person, type Story, tube } from "#seed-demo/story.ts";

/** A gastrojejunostomy in its place with its tip back in the stomach: the tip has a date of its own. */
export const tipBackInTheStomach: Story = {
  patient: person("Noodleworth", "Florizel", {
    number: "004746",
    birthOn: "27 oct 1956",
    telephones: "555 0119",
  }),
  acts: [
    tube(52, "feed", { kind: "gj", size: "18 f", retention: "balloon", balloon: "7" }),
    act(52, {
      at: "10:40",
      by: "physician",
      form: "tip position",
      tube: "feed",
      texts: { inPlace: "yes", where: "past the bend of the jejunum" },
    }),
    call(50, "Fed through the night."),
    act(40, { form: "anchors removed", tube: "feed", texts: { what: "2 anchors", fixation: "disc" } }),
    ...[36, 29, 22, 15, 8, 2].map((daysAgo) =>
      act(daysAgo, { form: "balloon checked", tube: "feed", texts: { found: "7", refilled: "7" } }),
    ),
    call(3, "Feed comes up. Seen tomorrow."),
    act(2, {
      at: "11:00",
      by: "physician",
      form: "tip position",
      tube: "feed",
      texts: { inPlace: "no", where: "back in the stomach" },
    }),
  ],
};
