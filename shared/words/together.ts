import { shutModes } from "#shared/output/low-day.ts";
import type { Beside } from "#shared/output/together/bile-beside.ts";
import {
  type RouteFigure,
  type UrineSum,
  VOIDED,
  type VoidedFigure,
} from "#shared/output/together/urine-by-route.ts";
import type { TubeState } from "#shared/tube/state.ts";
import { andList } from "#shared/words/and-list.ts";
import { incompleteWords, printRate } from "#shared/words/output.ts";

/** What little output of a tube means, where tubes of opposite meaning stand beside each other. */
export function lowMeans({ role, mode }: Pick<TubeState, "role" | "mode">): string {
  if (shutModes.includes(mode)) return `It is ${mode}: it shows zero and means to.`;
  return role === "collection"
    ? "A collection: low asks for a review, and is one part of it."
    : "It drains an organ: low is an alarm, never a removal sign.";
}

/** Why a tube stands beside the one that was asked for. */
export const besideWords = ({ certain }: Beside): string =>
  certain
    ? "Linked: bile that comes by the one may be missing from the other, and low means opposite things."
    : "Shown beside it because nobody wrote down where the collection lies: it may be bile. Low means opposite things.";

/** What came by one tube: "1480 mL/24 h", that it is shut or was not in, or why it cannot be told. */
export function routeWords(figure: RouteFigure): string {
  switch (figure.kind) {
    case "known":
      return printRate(figure.mlPer24h);
    case "shut":
      return "shut";
    case "not in":
      return "not in";
    case "cannot tell":
      return ["cannot tell", ...figure.because.map((reason) => incompleteWords[reason])].join(": ");
  }
}

export function voidedWords(voided: VoidedFigure): string {
  switch (voided.kind) {
    case "known":
      return printRate(voided.mlPer24h);
    case "cannot tell":
      return "noted as not known";
    case "missing":
      return "not recorded";
  }
}

/** The sum, or what is missing for it, by the titles of the tubes. */
export function urineSumWords(sum: UrineSum, titles: ReadonlyMap<string, string>): string {
  if (sum.kind === "known") return printRate(sum.mlPer24h);
  const missing = sum.missing.map((id) => (id === VOIDED ? "voided" : (titles.get(id) ?? "")));
  return `cannot tell: ${andList(missing)} not known`;
}

/** What a voided volume is, beneath the table. */
export const urineKey =
  "Voided is the volume of 24 hours that was noted for that day. A day in progress is not summed. What is missing makes the sum unknown, never smaller.";

/** Where no other way of urine was ever written down. */
export const voidedNeverNoted =
  "No voided volume is recorded of these days: urine by all routes cannot be told. It is noted with the clinical state.";
