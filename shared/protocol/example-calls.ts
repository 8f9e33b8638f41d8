import type { CallRows, QuestionRow } from "#shared/protocol/call-rows.ts";
import type { Protocol } from "#shared/protocol/protocol.ts";
import type { Role } from "#shared/tube/vocabulary.ts";

/** Wholly or partly outside, so that something can be seen of them. */
const outside: Role[] = [
  "collection",
  "drains an organ",
  "air and fluid",
  "intermittent",
  "feeding",
  "venting",
  "irrigation access",
];
/** What runs out of them is watched between one emptying and the next. */
const running: Role[] = ["collection", "drains an organ", "venting"];
const flushed: Role[] = ["collection", "drains an organ", "feeding", "venting"];

type Question = Pick<QuestionRow, "id" | "asks"> & Partial<QuestionRow>;

const question = (row: Question): QuestionRow => ({
  of: "each tube",
  roles: [],
  kinds: [],
  heldBy: [],
  only: null,
  opensOn: "yes",
  redFlag: null,
  instead: [],
  thenRecord: null,
  source: "CP",
  ...row,
});

/** Questions of the example table: of the patient first, the gravest before the others, then of each tube. */
const exampleQuestions: QuestionRow[] = [
  question({
    id: "breath or chest",
    asks: "Short of breath, or pain in the chest?",
    of: "the patient",
    redFlag: "breathless or chest pain",
  }),
  question({
    id: "bleeding",
    asks: "Heavy, bright red bleeding?",
    of: "the patient",
    redFlag: "heavy bleeding",
  }),
  question({ id: "collapsed", asks: "Collapsed or passed out?", of: "the patient", redFlag: "collapse" }),
  question({
    id: "fever",
    asks: "A temperature of 38.0 C or more, shaking chills, or feeling very unwell?",
    of: "the patient",
    redFlag: "fever",
    instead: [
      { of: "immune suppression", redFlag: "fever and immune suppression" },
      { of: "a tube is shut", redFlag: "trial with symptoms" },
    ],
  }),
  question({
    id: "chills and confused",
    asks: "Shaking chills with confusion, faintness or fast breathing?",
    of: "the patient",
    redFlag: "chills with confusion",
  }),
  question({
    id: "headache and sweating",
    asks: "Headache and sweating, with little or nothing draining?",
    of: "the patient",
    kinds: ["nephrostomy", "suprapubic catheter"],
    instead: [{ of: "cord injury at T6 or above", redFlag: "cord injury and blocked bladder drain" }],
  }),
  question({
    id: "chest tube in place",
    asks: "Has it come out, or come apart?",
    roles: ["air and fluid"],
    redFlag: "chest tube out",
    thenRecord: "tube out",
  }),
  question({
    id: "come out",
    asks: "Has it come out, or part of the way out?",
    roles: outside.filter((role) => role !== "air and fluid"),
    redFlag: "out or partly out",
    thenRecord: "tube out",
  }),
  question({
    id: "draining",
    asks: "Is anything draining?",
    roles: running,
    only: "open",
    opensOn: "no",
    redFlag: "dry",
    thenRecord: "output",
  }),
  question({
    id: "new fluid",
    asks: "New blood, clots, bile, feces, pus, food or urine where there was none?",
    roles: outside,
    redFlag: "new fluid",
  }),
  question({
    id: "leak",
    asks: "A leak round it that soaks the dressing?",
    roles: outside,
    redFlag: "soaking leak",
    instead: [{ of: "a tube is shut", redFlag: "trial with symptoms" }],
  }),
  question({
    id: "flush",
    asks: "Does the flush go in easily and without pain, where one is ordered?",
    roles: flushed,
    opensOn: "no",
    redFlag: "failed flush",
  }),
  question({
    id: "while shut",
    asks: "Pain, or yellow skin or eyes, since it was shut?",
    roles: running,
    only: "shut",
    redFlag: "trial with symptoms",
  }),
  question({
    id: "bile or dizzy",
    asks: "Much more bile than before, or dizzy?",
    kinds: ["external biliary drain", "internal-external biliary drain"],
    only: "open",
    redFlag: "much bile or dizzy",
    thenRecord: "output",
  }),
  question({
    id: "after a feed",
    asks: "Severe belly pain after a feed, or fresh blood or feed leaking?",
    roles: ["feeding"],
    redFlag: "pain after a feed",
  }),
  question({
    id: "skin",
    asks: "Red or sore skin round it?",
    roles: outside,
    redFlag: "skin redness",
  }),
  question({
    id: "fixation",
    asks: "Is what holds it at the skin loose?",
    roles: outside,
    redFlag: "loose fixation",
  }),
  question({
    id: "balloon water",
    asks: "Was the water in its balloon looked at, and was any lost?",
    heldBy: ["balloon"],
    redFlag: "balloon loss",
    thenRecord: "balloon water",
  }),
  question({
    id: "last volume",
    asks: "Is there a volume that has not been told yet?",
    roles: ["collection", "drains an organ", "air and fluid", "intermittent", "venting"],
    thenRecord: "output",
  }),
  question({
    id: "knows of it",
    asks: "Do they know that this tube is inside them, and by when it is changed or taken out?",
    roles: ["internal"],
    opensOn: "no",
    thenRecord: "told of the tube",
  }),
  question({
    id: "supplies",
    asks: "Do supplies run out: bags, syringes, dressings, a spare tube of the same size?",
    of: "the patient",
    redFlag: "supplies",
  }),
];

const rung = (row: Omit<CallRows["rungs"][number], "source">): CallRows["rungs"][number] => ({
  ...row,
  source: "CP",
});

/** Calls of the example table. */
export const exampleCalls: Protocol["calls"] = {
  collectionEvery: { days: [7, 14], source: "CP" },
  trialOn: { days: [1, 2, 7, 14], closed: "who covers a day on which the clinic is closed?", source: "CP" },
  beforeExchange: { days: 21, workingDays: 2, source: "CP" },
  afterRemoval: { from: 1, to: 3, source: "CP" },
  diaryMissing: { days: 7, source: "CP" },
  notReached: { attempts: 3, withinWorkingDays: 5, twiceSameDayHours: 72, source: "CP" },
  rungs: [
    rung({ rung: "alternate contact", afterWorkingDays: 1, says: "ring whom the patient named" }),
    rung({ rung: "letter", afterWorkingDays: 1, says: "a letter to the patient, in plain words" }),
    rung({
      rung: "referrer and family doctor",
      afterWorkingDays: 5,
      says: "ring or write to both, and ask where the patient is",
    }),
    rung({ rung: "physician", afterWorkingDays: 5, says: "a physician decides how it goes on" }),
  ],
  hours: [
    { part: "morning", from: 9, to: 12, source: "CP" },
    { part: "afternoon", from: 13, to: 17, source: "CP" },
    { part: "evening", from: 17, to: 20, source: "CP" },
  ],
  whereaboutsEvery: { days: 3, ward: "the ward is rung about the tube", source: "CP" },
  questions: exampleQuestions,
};
