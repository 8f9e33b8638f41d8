/** What a place of a row is called that stands in several sorts of rows and means the same in each. */
const common: Readonly<Record<string, string>> = {
  source: "Source",
  acts: "What is done, with commas between",
  kind: "Kind of tube",
  kinds: "Kinds of tube, with commas between",
  id: "Name of the row",
  level: "Who is reached, and how soon",
  says: "Says",
  untilReached: "Until somebody is reached",
};

/** What a list inside a row is a list of: one of its places. */
const places: Readonly<Record<string, string>> = {
  "intervals.byRoute": "Way",
  "redFlags.raisedBy": "Raised by entry",
  "calls.questions.instead": "Instead",
  "bleeding.rows": "Class",
  "bleeding.rows.acts": "act",
};

/** What each place is called, with its unit, by sort and path; places of lists without their number. */
const leafNames: Readonly<Record<string, string>> = {
  "intervals.factor": "Only with the factor",
  "intervals.turn": "For which catheter of a tract",
  "intervals.asks": "Asks for",
  "intervals.note": "Note beside the days",
  "intervals.earliest": "Earliest, days",
  "intervals.target": "Target, days",
  "intervals.latest": "Latest, days",
  "intervals.hardLatest": "Hard latest, days",
  "intervals.notExchangedBefore": "Not exchanged in a tract under, days",
  "intervals.immatureUnder": "Immature if out, under, days",
  "intervals.immatureIfSlowUnder": "The same if slow to heal, days",
  "intervals.matureFrom": "Mature from, days",
  "intervals.inHospitalUnder": "In hospital in a tract under, days",
  "intervals.notRemovedBefore": "Not removed before a tract age of, days",
  "intervals.byRoute.route": "the way to the organ",
  "intervals.byRoute.immatureUnder": "immature if out, under, days",
  "intervals.byRoute.notRemovedBefore": "not removed before, days",
  "firstCall.from": "From day, after the start",
  "firstCall.to": "To day, after the start",
  "escalation.daysPastTarget": "Days past the target",
  "passage.clearance": "A wire is thinner than a measured bore by, with its unit",
  "passage.boreTolerance": "A measured bore is wider or narrower by, with its unit",
  "passage.outsideTolerance.wire": "A wire is thicker or thinner by, with its unit",
  "passage.outsideTolerance.device": "Any other outside is thicker or thinner by, with its unit",
  "passage.outsideTolerance.source": "Source of the tolerances of outsides",
  "output.lowNetMl": "A low day is under, net mL/24 h",
  "output.lowDays": "On so many complete days running",
  "output.flushDoesNotComeBackMl": "Flush does not come back under, net mL/24 h",
  "flush.order": "Order",
  "balloon.first.from": "First looked at from day",
  "balloon.first.to": "First looked at to day",
  "balloon.every": "Then every, days",
  "balloon.lossOverMl": "A loss is a question over, mL",
  "balloon.alarmAfter": "Such losses in a row that are an alarm",
  "balloon.fill": "Filled with",
  "tips.within": "Confirmed within, days",
  "tips.again": "And again after, days",
  "anchors.holds": "What usually holds it at the skin",
  "anchors.from": "Out from day, of anchors after the puncture, of a suture after the tube was put in",
  "anchors.to": "Out to day",
  "outputRows.lowNetInstead.lowNetMl": "A low day is under, net mL/24 h",
  "outputRows.lowNetInstead.lowDays": "On so many complete days running",
  "outputRows.lastCompleteDayHours.hours": "Hours",
  "outputRows.clinicalStateHours.hours": "Hours",
  "outputRows.fever.fromC": "From, °C",
  "outputRows.plateau.overMlPer24h": "Over, mL/24 h",
  "outputRows.plateau.days": "On days",
  "outputRows.plateau.ofLast": "Of the last covered days",
  "outputRows.dry.hours": "Nothing for, hours",
  "outputRows.dry.onlyWayOut": "The same where it is the only way out",
  "outputRows.low.underMlPer24h": "Under, mL/24 h",
  "outputRows.low.asks": "What is asked",
  "outputRows.high.overMlPer24h": "Over, mL/24 h",
  "outputRows.high.fromDay": "From day, after the start",
  "outputRows.suddenDrop.overPercent": "Under the median by over, %",
  "outputRows.suddenDrop.underMedianOfDays": "Median of the last complete days",
  "outputRows.suddenDrop.andMl": "And at least, mL less",
  "outputRows.suddenDrop.notInFirstHours": "Not in the first hours after placement or relief",
  "outputRows.chestTube.noAirLeakHours": "No air leak for, hours",
  "outputRows.chestTube.underMlPer24h": "Under, mL/24 h",
  "outputRows.chestTube.and": "And",
  "outputRows.sessions.lowMl": "Numeric part: under, mL a session",
  "outputRows.sessions.lowSessions": "On so many sessions running",
  "outputRows.sessions.and": "And",
  "outputRows.sessions.ceilingMl": "At most, mL a session",
  "outputRows.sessions.stopsOn": "Stops on",
  "outputRows.newFluid.pinkUrineHours": "Pink urine is asked again under, hours after a procedure",
  "outputRows.plausibility.overMlPer24h": "A question over, mL/24 h",
  "outputRows.plausibility.overTimesMedian": "Or over so many times the week's median",
  "outputRows.plausibility.andMoreMl": "And over, mL more",
  "tubeOut.out": "Wholly out, or pulled back only",
  "tubeOut.immature": "Immature tract",
  "tubeOut.mature": "Mature tract",
  "redFlags.raisedBy.trouble": "the trouble",
  "redFlags.raisedBy.grave": "grave",
  "calls.collectionEvery.days": "Days after the last call: not before the fewest, by the most",
  "calls.trialOn.days": "On days",
  "calls.trialOn.closed": "On a day on which the clinic is closed",
  "calls.beforeExchange.days": "Days before",
  "calls.beforeExchange.workingDays": "Working days before",
  "calls.afterRemoval.from": "From day",
  "calls.afterRemoval.to": "To day",
  "calls.notReached.attempts": "Attempts",
  "calls.notReached.withinWorkingDays": "Within working days",
  "calls.notReached.twiceSameDayHours": "Twice on the same day in the first hours",
  "calls.diaryMissing.days": "Nothing entered for, days",
  "calls.rungs.rung": "What is tried",
  "calls.rungs.afterWorkingDays": "So many working days after what came before it",
  "calls.hours.part": "Part of the day",
  "calls.hours.from": "From, full hour by the clinic's clock",
  "calls.hours.to": "To, full hour by the clinic's clock",
  "calls.whereaboutsEvery.days": "Every, days",
  "calls.whereaboutsEvery.ward": "The ward",
  "calls.questions.asks": "What is asked",
  "calls.questions.of": "Asked once of the patient, or of each tube",
  "calls.questions.roles": "Roles of tube, with commas between; blank is any",
  "calls.questions.kinds": "Kinds of tube, with commas between; blank is any",
  "calls.questions.heldBy": "Held by, with commas between; blank is anything",
  "calls.questions.only": "Only of tubes that are open, or shut; no row is either",
  "calls.questions.opensOn": "The answer that opens what follows; no row where none does",
  "calls.questions.redFlag": "Red flag that it opens, by the name of its row",
  "calls.questions.instead.of": "if",
  "calls.questions.instead.redFlag": "red flag that it opens then, by the name of its row",
  "calls.questions.thenRecord": "What is recorded then",
  "bleeding.rows.class": "class",
  "bleeding.rows.acts.act": "what it is",
  "bleeding.rows.inrAtMost.from": "INR at most, the stricter",
  "bleeding.rows.inrAtMost.to": "INR at most, the laxer",
  "bleeding.rows.plateletsAtLeast": "platelets at least, x 10^9/L",
  "bleeding.rows.labs": "labs",
  "bleeding.liver": "Liver disease",
  "bleeding.accessAtRisk": "Where access may be lost",
  "planning.room.minutes": "Minutes of room",
  "planning.room.further": "Each further tube of the visit, minutes",
  "planning.room.needs": "What the room must have, with commas between",
  "planning.upsize.usualStepF": "Usual step, F",
  "planning.upsize.noteOverF": "A note is asked over, F",
  "planning.wire.beyondTipCm.from": "Beyond the tip from, cm",
  "planning.wire.beyondTipCm.to": "Beyond the tip to, cm",
  "planning.wire.gripCm": "To hold, cm",
  "planning.release.retentions": "Held by, with commas between",
  "planning.release.comesOut": "Must come out",
  "planning.readyF.below": "Below the planned size, F",
  "planning.readyF.above": "Above the planned size, F",
  "planning.findInsides.withinDays": "From days before a planned exchange",
  "planning.reasons.asks": "A reason is asked where, with commas between",
  "planning.reasons.offered": "Reasons on offer, one a line",
  "visits.prerequisites.thing": "What is settled",
  "visits.prerequisites.kinds": "Kinds of tube, with commas between; blank is any",
  "visits.prerequisites.workingDaysBefore": "By so many working days before the visit",
  "visits.prerequisites.leadHours": "Where it is needed it takes, hours before the visit",
  "visits.confirmed.workingDaysBefore": "By so many working days before the visit",
};

/** The names that stand here, for a test that none is left over. */
export const namedLeaves = { leaves: Object.keys(leafNames), places: Object.keys(places) };

const withoutNumbers = (parts: readonly string[]): string =>
  parts.filter((part) => !/^\d+$/.test(part)).join(".");

/** "Way 2, " of "byRoute.2.route": which place of which list. */
function placeWords(sort: string, parts: readonly string[]): string {
  const words = parts.flatMap((part, at) => {
    const list = withoutNumbers([sort, ...parts.slice(0, at)]);
    return /^\d+$/.test(part) ? [`${places[list] ?? parts[at - 1]} ${part}`] : [];
  });
  return words.length === 0 ? "" : `${words.join(", ")}: `;
}

/** What a place of a row is called, with its unit: "Target, days", "Way 2: immature if out, under, days". Null where nobody has named it. */
export function leafLabel(sort: string, path: string): string | null {
  const parts = path.split(".");
  const last = parts.at(-1) ?? path;
  const where = placeWords(sort, parts);
  const name = leafNames[withoutNumbers([sort, ...parts])];
  if (name !== undefined) return `${where}${name}`;
  const shared = common[last];
  if (shared === undefined) return null;
  return where === "" ? shared : `${where}${shared.charAt(0).toLowerCase()}${shared.slice(1)}`;
}
