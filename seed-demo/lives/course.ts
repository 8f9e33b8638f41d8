import { nextWeekday, onWeekday } from "#seed-demo/days.ts";
import type { Cast } from "#seed-demo/lives/casts.ts";
import type { Chance } from "#seed-demo/lives/phase.ts";
import { type Act, act, call, check, emptied, tube } from "#seed-demo/story.ts";
import type { Texts } from "#shared/record/field-spec.ts";
import { kindOf } from "#shared/tube/kind/kinds.ts";

/** One tube of a life: the story's word for it, how it is typed, its side where it has one. */
export type Tube = { readonly word: string; readonly cast: Cast; readonly side: string };

/** How many days ago it was placed, with what is typed beside what the cast says. */
export type Placed = { readonly on: number; readonly texts?: Texts };

/** From an older day to a younger one, in days ago. */
export type Span = { readonly from: number; readonly to: number };

/** What is said in a call without a word to report. */
export const wellWords = [
  "Well, no fever.",
  "No pain, dressing dry.",
  "Knows whom to ring, and when to come.",
  "Manages the bag without help.",
  "A little sore, otherwise well.",
] as const;

/** What is typed of the balloon of a new catheter. */
export const filled = ({ balloonMl }: Cast): Texts =>
  balloonMl === undefined ? {} : { balloon: String(balloonMl) };

/** Placed that many days ago, and called one to three days later where that lies behind. */
export function placedAndCalled(chance: Chance, of: Tube, placed: Placed): Act[] {
  const { cast, side, word } = of;
  const sided: Texts = cast.sided ? { side } : {};
  const size = chance.draw.from(cast.sizes);
  const texts = { kind: cast.kind, size, ...sided, ...cast.texts, ...filled(cast), ...placed.texts };
  return [tube(placed.on, word, texts), ...calledAfter(chance, placed.on)];
}

/** The first call after a tube was placed or exchanged. */
export function calledAfter({ startDay, draw }: Chance, daysAgo: number): Act[] {
  const on = nextWeekday(startDay, daysAgo - draw.between(1, 3));
  return on < 1 ? [] : [call(on, draw.from(wellWords))];
}

/** Every four weeks or so between two visits: looked at, flushed, or a word on the telephone. */
export function betweenVisits({ startDay, draw }: Chance, { word }: Tube, { from, to }: Span): Act[] {
  const acts: Act[] = [];
  for (let daysAgo = from - draw.between(10, 20); daysAgo > to + 4; daysAgo -= draw.between(18, 34)) {
    const on = onWeekday(startDay, daysAgo);
    const kind = draw.from(["checked", "flushed", "called"] as const);
    if (kind === "checked") acts.push(check(on, word, { finding: "In place, site quiet." }));
    if (kind === "flushed")
      acts.push(act(on, { form: "flushed", tube: word, texts: { went: "easily", given: "5" } }));
    if (kind === "called") acts.push(call(on, draw.from(wellWords)));
  }
  return acts;
}

/** What held it at the skin comes out on the first day of its kind's row, where that lies behind. */
export function skinFreed({ startDay }: Chance, { word, cast }: Tube, placedOn: number): Act[] {
  const { skin } = kindOf(cast.kind);
  const on = skin === null ? 0 : nextWeekday(startDay, placedOn - skin.from);
  if (skin === null || on < 1) return [];
  const what = skin.holds === "anchors" ? "3 anchors" : "the skin suture";
  return [act(on, { form: "anchors removed", tube: word, texts: { what, fixation: "disc" } })];
}

/** The water of a balloon, weekly from the third week on: a little is lost each time, never much. */
export function balloonChecks({ draw }: Chance, { word, cast }: Tube, { from, to }: Span): Act[] {
  const { balloonMl } = cast;
  if (balloonMl === undefined) return [];
  const acts: Act[] = [];
  for (let daysAgo = from - 21; daysAgo > to; daysAgo -= 7) {
    const found = balloonMl - draw.between(0, 4) / 10;
    const texts = { found: String(found), refilled: String(balloonMl) };
    acts.push(act(daysAgo, { at: "09:20", form: "balloon checked", tube: word, texts }));
  }
  return acts;
}

/** Emptied on each of the last mornings, falling to that share of itself by the end. */
export type Mornings = { readonly days: number; readonly fallsTo: number };

export function mornings({ draw }: Chance, { word, cast }: Tube, { days, fallsTo }: Mornings): Act[] {
  const { output } = cast;
  if (output === undefined) return [];
  const [least, most] = output.ml;
  const level = draw.between(least, most);
  const flush = draw.from(["10", "2 x 10"]);
  return Array.from({ length: days }, (_, index) => {
    const share = 1 - ((1 - fallsTo) * index) / days;
    const drained = Math.round(level * share * (draw.between(90, 110) / 100));
    const flushGiven = draw.percent(8) ? "?" : flush;
    return emptied(days - index, word, {
      drained: String(drained),
      flushGiven,
      characters: output.characters,
    });
  });
}
