import { toMl } from "#shared/output/microlitre.ts";
import type { Fact } from "#shared/tube/certainty.ts";
import type { coursePayloads } from "#shared/tube/course-payloads.ts";
import { factPhrases, toldFact } from "#shared/words/facts.ts";
import { fluidTested } from "#shared/words/fluid-tests.ts";
import { sentence, type Tell, toldBy, yesNo } from "#shared/words/sentence.ts";

const ml = (fact: Fact<number>, what: string, words: (volume: string) => string): string =>
  toldFact(fact, { what, print: (value) => words(`${value} mL`), telling: "marked" });

/** What happened between exchanges, as the story tells it. */
export const courseSentences: { readonly [K in keyof typeof coursePayloads]: Tell<K> } = {
  repositioned: ({ externalLength, seenHow, note }) =>
    sentence("Repositioned", [...factPhrases({ externalLength }, "marked", "told"), seenHow], note),
  flushed: ({ given, went, cameBack, toldBy: who, note }) => {
    const volume = given.certainty === "unknown" ? given : { ...given, value: toMl(given.value) };
    return sentence(
      "Flushed",
      [
        ml(volume, "volume", (amount) => amount),
        went === "hard" ? "hard to flush" : went === "easily" ? "went in easily" : "did not go in",
        yesNo(cameBack, ["came back", "did not come back", "unknown whether it came back"]),
        toldBy(who),
      ],
      note,
    );
  },
  unblocked: ({ how, note }) => sentence("Unblocked", [how], note),
  "clamp trial started": ({ covers, bagAtHome, note }) =>
    sentence(
      "Clamp trial started",
      [
        covers === null ? "nobody named to cover the calls" : `calls covered by ${covers}`,
        yesNo(bagAtHome, ["a bag is at home", "no bag at home", "unknown whether a bag is at home"]),
      ],
      note,
    ),
  "clamp trial passed": ({ mode, note }) => sentence("Clamp trial passed", [`now ${mode}`], note),
  "clamp trial failed": ({ mode, note }) => sentence("Clamp trial failed", [`now ${mode}`], note),
  "suction changed": ({ mode, pressure, note }) => sentence("Suction changed", [mode, pressure], note),
  "balloon checked": ({ found, refilled, note }) =>
    sentence(
      "Balloon water checked",
      [
        ml(found, "water found", (volume) => `found ${volume}`),
        ml(refilled, "water refilled", (volume) => `refilled to ${volume}`),
      ],
      note,
    ),
  "anchors removed": ({ what, fixation, note }) =>
    sentence(
      "Anchors or sutures removed",
      [what, ...(fixation === undefined ? [] : factPhrases({ fixation }, "marked", "told"))],
      note,
    ),
  blocked: ({ toldBy: who, note }) => sentence("Blocked", [toldBy(who)], note),
  leaking: ({ soaking, toldBy: who, note }) =>
    sentence("Leaking", [yesNo(soaking, ["soaking", "not soaking", "unknown how much"]), toldBy(who)], note),
  infected: ({ fever, toldBy: who, note }) =>
    sentence(
      "Infected",
      [yesNo(fever, ["with fever", "no fever", "unknown whether fever"]), toldBy(who)],
      note,
    ),
  bled: ({ heavy, toldBy: who, note }) =>
    sentence("Bled", [yesNo(heavy, ["heavily", "not heavily", "unknown how much"]), toldBy(who)], note),
  broken: ({ fragmentInside, part, toldBy: who, note }) =>
    sentence(
      "Broken",
      [
        part,
        yesNo(fragmentInside, [
          "a piece is left inside",
          "no piece is left inside",
          "unknown whether a piece is left",
        ]),
        toldBy(who),
      ],
      note,
    ),
  "fluid tested": fluidTested,
};
