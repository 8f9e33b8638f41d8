import type { Why, WhyCode } from "#shared/step/step.ts";
import { skinHoldIn } from "#shared/tube/skin-hold.ts";
import { capital } from "#shared/words/capital.ts";

type Args = Why["args"];

/** "anchors out on day 10 to 14 after the puncture". */
export const dueOutWords = ({ holds, from, to }: Args): string =>
  `${holds} out on day ${from} to ${to} after ${holds === "anchors" ? "the puncture" : "the tube was put in"}`;

function heldWords(fixation: string): string {
  const said = `Fixed at the skin by: ${fixation}.`;
  return skinHoldIn(fixation) === null ? `${said} Nobody said whether there are anchors or a suture.` : said;
}

/** Why anchors or a suture are asked about. */
export const anchorWhy = {
  "anchors-row": ({ source, ...row }) => `${capital(dueOutWords(row))} (source ${source}).`,
  "held-at-skin": ({ fixation }) =>
    fixation === null
      ? "Nobody said how it is fixed at the skin: there may be none."
      : heldWords(String(fixation)),
  "start-unknown": () => "The day that this counts from is unknown: asked at once.",
} as const satisfies Partial<Record<WhyCode, (args: Args) => string>>;
