import type { OutputPage } from "#app/tubes/tube-page.ts";
import { incompleteWords, printRate, printVolume, remarkWords } from "#shared/words/output.ts";

export type NetDay = OutputPage["output"]["days"][number];

/** "17 mL"; that it cannot be told, or that nobody measured, is said in its place. */
export function netWords({ net }: NetDay): string {
  switch (net.kind) {
    case "known":
      return printVolume(net.ul);
    case "cannot tell":
      return "cannot tell";
    case "missing":
      return "no entry";
  }
}

export const rateWords = ({ net }: NetDay): string => (net.kind === "known" ? printRate(net.mlPer24h) : "");

const HOUR_MS = 3_600_000;

/** "24 h", "7.5 h": how much of the day readings cover. */
export const coveredWords = ({ coveredMs }: NetDay): string =>
  `${Math.round((coveredMs / HOUR_MS) * 10) / 10} h`;

/** Complete, or each reason why not. */
export const completeWords = ({ complete, because }: NetDay): string =>
  complete ? "complete" : because.map((reason) => incompleteWords[reason]).join(" ");

export const remarksOf = ({ remarks }: NetDay): string =>
  remarks.map((remark) => remarkWords[remark]).join(" ");
