import type { Level } from "#shared/protocol/levels.ts";
import type { RedFlagRow } from "#shared/protocol/red-flag-rows.ts";

type Flag = Omit<RedFlagRow, "level" | "source" | "raisedBy"> & Partial<Pick<RedFlagRow, "raisedBy">>;

const at =
  (level: Level) =>
  (flag: Flag): RedFlagRow => ({ raisedBy: [], ...flag, level, source: "CP" });

const emergency = at("emergency services");
const sameDay = at("same day");
const nextWorkingDay = at("next working day");

/** Red flags of the example table; the route to whoever is reached is set locally. */
export const exampleRedFlags: RedFlagRow[] = [
  emergency({
    id: "breathless or chest pain",
    says: "breathlessness or chest pain with any tube",
    untilReached: null,
  }),
  emergency({
    id: "chest tube out",
    says: "chest tube out or disconnected",
    untilReached: "cover the site",
  }),
  emergency({
    id: "heavy bleeding",
    says: "heavy bright bleeding",
    untilReached: "keep the tube",
    raisedBy: [{ trouble: "bled", grave: true }],
  }),
  emergency({ id: "collapse", says: "collapse", untilReached: null }),
  emergency({
    id: "pain after a feed",
    says: "severe abdominal pain after a feed, or with fresh blood or feed leaking soon after placement",
    untilReached: "stop the feed",
  }),
  emergency({
    id: "fever and immune suppression",
    says: "fever on chemotherapy or other immune suppression",
    untilReached: "reconnect to bag",
  }),
  emergency({
    id: "chills with confusion",
    says: "shaking chills with confusion, faintness or fast breathing",
    untilReached: "reconnect to bag",
  }),
  emergency({
    id: "cord injury and blocked bladder drain",
    says: "cord injury at T6 or above with headache, sweating and a blocked bladder drain",
    untilReached: "do not force the flush",
  }),
  sameDay({
    id: "fever",
    says: "38.0 C and over, shaking chills, or feels very unwell",
    untilReached: "reconnect to bag",
    raisedBy: [{ trouble: "infected", grave: true }],
  }),
  sameDay({
    id: "out or partly out",
    says: "tube out or partly out",
    untilReached: "keep the tube, do not put it back",
  }),
  sameDay({
    id: "dry",
    says: "dry by the rows of output",
    untilReached: "do not force the flush",
    raisedBy: [{ trouble: "blocked", grave: true }],
  }),
  sameDay({
    id: "new fluid",
    says: "new blood, clots, bile, feces, pus, food or urine where it was not",
    untilReached: "keep the tube",
    raisedBy: [{ trouble: "bled", grave: false }],
  }),
  sameDay({
    id: "soaking leak",
    says: "soaking leak",
    untilReached: "cover the site",
    raisedBy: [{ trouble: "leaking", grave: true }],
  }),
  sameDay({
    id: "failed flush",
    says: "painful or failed flush",
    untilReached: "do not force the flush",
  }),
  sameDay({
    id: "trial with symptoms",
    says: "capped trial with pain, fever, jaundice or leak",
    untilReached: "reconnect to bag",
  }),
  sameDay({
    id: "much bile or dizzy",
    says: "external bile over its row, or dizziness",
    untilReached: null,
  }),
  nextWorkingDay({
    id: "skin redness",
    says: "skin redness",
    untilReached: "cover the site",
    raisedBy: [{ trouble: "infected", grave: false }],
  }),
  nextWorkingDay({ id: "loose fixation", says: "loose fixation", untilReached: "keep the tube" }),
  nextWorkingDay({ id: "supplies", says: "supplies run out", untilReached: null }),
  nextWorkingDay({
    id: "balloon loss",
    says: "balloon loss with the tube secure",
    untilReached: "keep the tube",
  }),
];
