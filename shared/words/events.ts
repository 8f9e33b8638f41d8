import { printDay, printWhen } from "#shared/day/print-day.ts";
import type { Coaxial } from "#shared/fit/coaxial.ts";
import { printLength } from "#shared/size/print-length.ts";
import { type Fact, known } from "#shared/tube/certainty.ts";
import { kindOf } from "#shared/tube/kind/kinds.ts";
import { tubeTitle } from "#shared/tube/name.ts";
import type { EventKind, Opening, Renewal } from "#shared/tube/payloads.ts";
import { alarmSentences } from "#shared/words/alarm-events.ts";
import { callSentences } from "#shared/words/call-events.ts";
import { careSentences, ownerName } from "#shared/words/care-events.ts";
import { conditionNames } from "#shared/words/conditions.ts";
import { courseSentences } from "#shared/words/course-events.ts";
import { factPhrases, toldFact } from "#shared/words/facts.ts";
import { printPlan } from "#shared/words/plan.ts";
import { reviewSentences } from "#shared/words/review-events.ts";
import {
  type NameOf,
  type Part,
  sentence,
  type Tell,
  toldBy,
  wholeWords,
  yesNo,
} from "#shared/words/sentence.ts";
import { stepNames } from "#shared/words/steps.ts";
import { visitSentences } from "#shared/words/visit-events.ts";

const planned = (plan: Opening["plan"]): Part => (plan === null ? null : `plan: ${printPlan(plan)}`);

function opened(head: string, opening: Opening, extra: readonly Part[]): string {
  const { facts, plan, cavity, route, indication, cancerObstruction } = opening;
  const telling = extra.length > 0 ? "plain" : "marked";
  const parts = [
    tubeTitle(opening),
    ...factPhrases(facts, telling, "left out"),
    cavity,
    route,
    indication,
    known(cancerObstruction) === true && "obstruction by cancer",
    planned(plan),
    ...extra,
  ];
  return sentence(head, parts, opening.note);
}

const renewed =
  (head: string) =>
  ({ facts, plan, elsewhere, difficult, note }: Renewal): string =>
    sentence(
      head,
      [
        ...factPhrases(facts, elsewhere === null ? "marked" : "plain", "told"),
        elsewhere !== null && `elsewhere, at ${elsewhere} (reported)`,
        difficult && "difficult",
        planned(plan),
      ],
      note,
    );

const removed: Tell<"removed"> = ({
  whole,
  loopReleased,
  stringOut,
  byWhom,
  seenHow,
  siteCheckOn,
  toldBy: who,
}) =>
  sentence("Removed", [
    yesNo(whole, wholeWords),
    yesNo(loopReleased, ["loop released", "loop not released", "unknown whether the loop was released"]),
    stringOut !== undefined &&
      yesNo(stringOut, ["string out too", "string not out", "unknown whether the string is out"]),
    byWhom !== null && `by ${byWhom}`,
    seenHow,
    siteCheckOn !== undefined && `site looked at on ${printDay(siteCheckOn)}`,
    toldBy(who),
  ]);

const plannedExchange: Tell<"exchange planned"> = ({
  on,
  kind,
  size,
  takes,
  wire,
  things,
  agreedBy,
  reason,
}) =>
  sentence("Exchange planned", [
    on === null ? "no day set" : `for ${printDay(on)}`,
    kindOf(kind).name,
    ...factPhrases({ size, takes }, "marked", "told"),
    toldFact(wire, {
      what: "wire",
      print: (size) => `over a wire of ${printLength(size, "in")}`,
      telling: "marked",
    }),
    named(things?.stiffener),
    named(things?.sheath),
    agreedBy ? `agreed by ${agreedBy}` : null,
    reason ? `goes on because: ${reason}` : null,
  ]);

/** What else lies over the wire, by its sort, and by its name where it comes from the shelf. */
const named = (thing: Coaxial | null | undefined): Part =>
  thing
    ? `with ${thing.name === `the ${thing.sort}` ? `a ${thing.sort}` : `the ${thing.sort} ${thing.name}`}`
    : null;

const conditions: Tell<"conditions noted"> = ({ conditions: said, toldBy: who }) =>
  sentence("Noted of the patient", [
    ...Object.entries<Fact<boolean | string> | undefined>(said).flatMap(([name, fact]) => {
      const what = conditionNames[name as keyof typeof conditionNames];
      const print = (value: boolean | string): string =>
        typeof value === "string" ? `${what} ${value}` : `${what} ${value ? "yes" : "no"}`;
      return fact === undefined ? [] : [toldFact(fact, { what, print, telling: "plain" })];
    }),
    toldBy(who),
  ]);

const assigned: Tell<"step assigned"> = ({ step, owner }, nameOf) =>
  sentence("Step given", [`"${stepNames[step]}" to ${ownerName(owner, nameOf)}`]);

const whereIs = (oldTube: string | undefined) => oldTube !== undefined && `the old tube: ${oldTube}`;

const sentences: { readonly [K in EventKind]: Tell<K> } = {
  placed: (opening) => opened("Placed", opening, []),
  "taken over": (opening) =>
    opened("Taken over", opening, [
      opening.from === null ? "from elsewhere (reported)" : `from ${opening.from} (reported)`,
      opening.tractSince.earliest !== null && `punctured ${printWhen(opening.tractSince)}`,
    ]),
  checked: ({ study, finding, concerns }) => sentence("Checked", [study, ...concerns], finding),
  exchanged: renewed("Exchanged"),
  upsized: renewed("Upsized"),
  downsized: renewed("Downsized"),
  salvaged: renewed("Salvaged through the old tract"),
  "new puncture": renewed("Replaced by a new puncture"),
  capped: ({ covers, bagAtHome }) =>
    sentence("Capped", [
      covers === null ? "nobody named to cover the calls" : `calls covered by ${covers}`,
      yesNo(bagAtHome, ["a bag is at home", "no bag at home", "unknown whether a bag is at home"]),
    ]),
  uncapped: ({ mode }) => sentence("Uncapped", [mode]),
  "tip position": ({ inPlace, where }) =>
    sentence("Tip", [yesNo(inPlace, ["in place", "not in place", "position unknown"]), where]),
  "partly dislodged": ({ externalLength, oldTube, toldBy: who, note }) =>
    sentence(
      "Pulled back",
      [...factPhrases({ externalLength }, "marked", "told"), whereIs(oldTube), toldBy(who)],
      note,
    ),
  "fell out": ({ whole, oldTube, toldBy: who, note }) =>
    sentence("Fell out", [yesNo(whole, wholeWords), whereIs(oldTube), toldBy(who)], note),
  "not replaced": ({ decidedBy, reason }) => sentence("Not replaced", [`decided by ${decidedBy}`], reason),
  converted: ({ opening }) => opened("Converted", opening, []),
  removed,
  died: ({ toldBy: who }) => sentence("Died", [toldBy(who)]),
  "facts noted": ({ facts, side, mode, toldBy: who, note }) =>
    sentence(
      "Noted",
      [
        side !== undefined &&
          toldFact(side, { what: "side", print: (word) => `side ${word}`, telling: "marked" }),
        ...factPhrases(facts, "marked", "told"),
        mode,
        toldBy(who),
      ],
      note,
    ),
  verified: ({ how }) => sentence("Confirmed", [how]),
  "clock dated": ({ catheterSince, tractSince, how }) =>
    sentence("Dated", [
      `in place since ${printWhen(catheterSince)}`,
      tractSince !== null && `punctured ${printWhen(tractSince)}`,
      how,
    ]),
  "plan recorded": ({ plan }) => sentence("Plan", [printPlan(plan)]),
  "exchange planned": plannedExchange,
  "conditions noted": conditions,
  "step assigned": assigned,
  called: ({ outcome, note }) => sentence("Called", [outcome], note),
  "dates confirmed": ({ note }) => sentence("New dates confirmed", [], note),
  amended: ({ reason }) => sentence("Amended", [], reason),
  voided: ({ reason, wrongPatient }) =>
    wrongPatient ? sentence("Voided", ["wrong patient"]) : sentence("Voided", [], reason),
  ...courseSentences,
  ...careSentences,
  ...reviewSentences,
  ...alarmSentences,
  ...visitSentences,
  ...callSentences,
};

/** An entry as the story tells it, in the past tense. The payload is one of that kind, as its schema read it. */
export function storySentence(
  { kind, payload }: { readonly kind: EventKind; readonly payload: unknown },
  nameOf: NameOf,
): string {
  return sentences[kind](payload as never, nameOf);
}
