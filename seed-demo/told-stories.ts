import { twoClocks } from "#seed-demo/stories/01-two-clocks.ts";
import { exchangedElsewhere } from "#seed-demo/stories/02-exchanged-elsewhere.ts";
import { upsizedAfterLowDays } from "#seed-demo/stories/03-upsized-after-low-days.ts";
import { cappedBagEmpty } from "#seed-demo/stories/04-capped-bag-empty.ts";
import { drySinceLastNight } from "#seed-demo/stories/05-dry-since-last-night.ts";
import { flushDoesNotComeBack } from "#seed-demo/stories/06-flush-does-not-come-back.ts";
import { twentyMinutesAndADay } from "#seed-demo/stories/07-twenty-minutes-and-a-day.ts";
import { roundMidnight } from "#seed-demo/stories/08-round-midnight.ts";
import { balloonLosesWater } from "#seed-demo/stories/09-balloon-loses-water.ts";
import { stentWithoutDate } from "#seed-demo/stories/10-stent-without-date.ts";
import { sometimeThatMonth } from "#seed-demo/stories/11-sometime-that-month.ts";
import { undated } from "#seed-demo/stories/11-undated.ts";
import { sizeUnknown } from "#seed-demo/stories/12-size-unknown.ts";
import { died } from "#seed-demo/stories/13-died.ts";
import { inHospice } from "#seed-demo/stories/13-in-hospice.ts";
import { toldDeadInError } from "#seed-demo/stories/13-told-dead-in-error.ts";
import { twoDrainsOneCavity } from "#seed-demo/stories/14-two-drains-one-cavity.ts";
import { bilomaBesideBiliary } from "#seed-demo/stories/15-biloma-beside-biliary.ts";
import { leaksIntoTheDressing } from "#seed-demo/stories/16-leaks-into-the-dressing.ts";
import { lowWithFever } from "#seed-demo/stories/17-low-with-fever.ts";
import { sessionMissed } from "#seed-demo/stories/18-session-missed.ts";
import { newTract } from "#seed-demo/stories/19-new-tract.ts";
import { tipBackInTheStomach } from "#seed-demo/stories/20-tip-back-in-the-stomach.ts";
import { convertedTwice } from "#seed-demo/stories/21-converted-twice.ts";
import { urologyTookItOut } from "#seed-demo/stories/22-urology-took-it-out.ts";
import { joinedFrom } from "#seed-demo/stories/23-joined-from.ts";
import { joinedHere } from "#seed-demo/stories/23-joined-here.ts";
import { onePatientTwoNumbers } from "#seed-demo/stories/23-one-patient-two-numbers.ts";
import { sidesSwapped } from "#seed-demo/stories/23-sides-swapped.ts";
import { latestInAClosure } from "#seed-demo/stories/24-latest-in-a-closure.ts";
import { rebookedThreeTimes } from "#seed-demo/stories/25-rebooked-three-times.ts";
import { inpatientAtCallTime } from "#seed-demo/stories/26-inpatient-at-call-time.ts";
import { firstBag } from "#seed-demo/stories/27-first-bag.ts";
import { irrigationIsNoFlush } from "#seed-demo/stories/28-irrigation-is-no-flush.ts";
import { pregnant } from "#seed-demo/stories/29-pregnant.ts";
import { stoneFormer } from "#seed-demo/stories/29-stone-former.ts";
import { earlyUpsize } from "#seed-demo/stories/30-early-upsize.ts";
import { flushOrderChanged } from "#seed-demo/stories/31-flush-order-changed.ts";
import { ouncesAndHalfABag } from "#seed-demo/stories/32-ounces-and-half-a-bag.ts";
import { putRightLater } from "#seed-demo/stories/33-put-right-later.ts";
import { labelledButDoubtful } from "#seed-demo/stories/35-labelled-but-doubtful.ts";
import { trialBeforeTheExchange } from "#seed-demo/stories/36-trial-before-the-exchange.ts";
import { thenSilence } from "#seed-demo/stories/37-then-silence.ts";
import { alwaysSixty } from "#seed-demo/stories/38-always-sixty.ts";
import { afterTheRelief } from "#seed-demo/stories/39-after-the-relief.ts";
import { trialOverTheWeekend } from "#seed-demo/stories/40-trial-over-the-weekend.ts";
import { stepsThatWereHers } from "#seed-demo/stories/41-steps-that-were-hers.ts";
import { bookedInTheHospital } from "#seed-demo/stories/42-booked-in-the-hospital.ts";
import { anchorsDue } from "#seed-demo/stories/anchors-due.ts";
import { anotherTube } from "#seed-demo/stories/another-tube.ts";
import { bileDuctStent } from "#seed-demo/stories/bile-duct-stent.ts";
import { blockedAndRunAgain } from "#seed-demo/stories/blocked-and-run-again.ts";
import { brokenFragment } from "#seed-demo/stories/broken-fragment.ts";
import { chestTubeOnSuction } from "#seed-demo/stories/chest-tube-on-suction.ts";
import { datedLater } from "#seed-demo/stories/dated-later.ts";
import { fellOutAndBack } from "#seed-demo/stories/fell-out-and-back.ts";
import { fellOutToday } from "#seed-demo/stories/fell-out-today.ts";
import { feverUnderACap } from "#seed-demo/stories/fever-under-a-cap.ts";
import { fragmentLeftIn } from "#seed-demo/stories/fragment-left-in.ts";
import { handedOver } from "#seed-demo/stories/handed-over.ts";
import { leftRightAndVoided } from "#seed-demo/stories/left-right-and-voided.ts";
import { notReached } from "#seed-demo/stories/not-reached.ts";
import { placedYesterday } from "#seed-demo/stories/placed-yesterday.ts";
import { plannedToday } from "#seed-demo/stories/planned-today.ts";
import { pulledBack } from "#seed-demo/stories/pulled-back.ts";
import { reviewedAndDecided } from "#seed-demo/stories/reviewed-and-decided.ts";
import { takenElsewhere } from "#seed-demo/stories/taken-elsewhere.ts";
import { toldByTelephone } from "#seed-demo/stories/told-by-telephone.ts";
import { trialPassed } from "#seed-demo/stories/trial-passed.ts";
import { twoStents } from "#seed-demo/stories/two-stents.ts";
import { visitMovedAndConfirmed } from "#seed-demo/stories/visit-moved-and-confirmed.ts";
import type { Story } from "#seed-demo/story.ts";
import type { Day } from "#shared/day/day.ts";

const onAnyDay: readonly Story[] = [
  twoClocks,
  exchangedElsewhere,
  upsizedAfterLowDays,
  cappedBagEmpty,
  drySinceLastNight,
  flushDoesNotComeBack,
  twentyMinutesAndADay,
  roundMidnight,
  balloonLosesWater,
  stentWithoutDate,
  undated,
  sizeUnknown,
  died,
  inHospice,
  toldDeadInError,
  twoDrainsOneCavity,
  bilomaBesideBiliary,
  leaksIntoTheDressing,
  lowWithFever,
  sessionMissed,
  newTract,
  tipBackInTheStomach,
  convertedTwice,
  urologyTookItOut,
  joinedFrom,
  joinedHere,
  onePatientTwoNumbers,
  sidesSwapped,
  latestInAClosure,
  rebookedThreeTimes,
  inpatientAtCallTime,
  firstBag,
  irrigationIsNoFlush,
  pregnant,
  stoneFormer,
  earlyUpsize,
  flushOrderChanged,
  ouncesAndHalfABag,
  putRightLater,
  labelledButDoubtful,
  trialBeforeTheExchange,
  thenSilence,
  alwaysSixty,
  afterTheRelief,
  stepsThatWereHers,
  bookedInTheHospital,
  anchorsDue,
  anotherTube,
  bileDuctStent,
  blockedAndRunAgain,
  brokenFragment,
  chestTubeOnSuction,
  datedLater,
  fellOutAndBack,
  fellOutToday,
  fragmentLeftIn,
  handedOver,
  leftRightAndVoided,
  placedYesterday,
  plannedToday,
  pulledBack,
  reviewedAndDecided,
  takenElsewhere,
  toldByTelephone,
  trialPassed,
  twoStents,
  visitMovedAndConfirmed,
  notReached,
  feverUnderACap,
];

/** The stories written by hand, one a file: a hard case of the trade each, and what a clinic sees beside them. */
export const toldStories = (startDay: Day): readonly Story[] => [
  ...onAnyDay,
  sometimeThatMonth(startDay),
  trialOverTheWeekend(startDay),
];
