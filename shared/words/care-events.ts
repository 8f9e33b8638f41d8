import { printDay } from "#shared/day/print-day.ts";
import type { carePayloads } from "#shared/tube/care-payloads.ts";
import type { Payload } from "#shared/tube/payloads.ts";
import { findingPhrases } from "#shared/words/clinical.ts";
import { toldFact } from "#shared/words/facts.ts";
import { roleNames } from "#shared/words/roles.ts";
import { type NameOf, sentence, type Tell, toldBy } from "#shared/words/sentence.ts";

export const ownerName = (owner: Payload<"step assigned">["owner"], nameOf: NameOf): string =>
  "staffId" in owner ? nameOf(owner.staffId) : roleNames[owner.role];

/** Who has the care and what was decided of it, as the story tells it. */
export const careSentences: { readonly [K in keyof typeof carePayloads]: Tell<K> } = {
  "removal decided": ({ decidedBy, by, owner, reason }, nameOf) =>
    sentence(
      "Removal decided",
      [`by ${decidedBy}`, `until ${printDay(by)}`, ownerName(owner, nameOf)],
      reason,
    ),
  "handed over": ({ to, person, note }) =>
    sentence("Handed over", [`to ${to}`, person !== null && `${person} asked`, "not accepted yet"], note),
  "accepted elsewhere": ({ by, place, how }) => sentence("Care accepted elsewhere", [`by ${by}`, place, how]),
  "follow-up ended": ({ decidedBy, reason }) =>
    sentence("Follow-up ended by decision", [`decided by ${decidedBy}`], reason),
  transferred: ({ place, findOut, askWhom, note }) =>
    sentence(
      "Transferred",
      [
        place,
        findOut.length > 0 && `to find out: ${findOut.join(", ")}`,
        askWhom !== null && `ask ${askWhom}`,
      ],
      note,
    ),
  "hospice decided": ({ decidedBy, until, calls, exchanges, team, note }) =>
    sentence(
      "Hospice",
      [
        `decided by ${decidedBy}`,
        `calls ${calls}`,
        `exchanges ${exchanges}`,
        `until ${printDay(until)}`,
        team !== null && `with ${team}`,
      ],
      note,
    ),
  "whereabouts noted": ({ place, where, toldBy: who, note }) =>
    sentence("Whereabouts", [place, where, toldBy(who)], note),
  "clinical state noted": ({ findings, toldBy: who, note }) =>
    sentence("Clinical state", [...findingPhrases(findings), toldBy(who)], note),
  "reconcile asked": ({ about, says, toldBy: who }) => sentence("Not agreed", [about, toldBy(who)], says),
  "reported out": ({ candidates, toldBy: who, note }) =>
    sentence(
      "One of several reported out",
      [candidates.map(({ number }) => `tube ${number}`).join(" or "), "not known which", toldBy(who)],
      note,
    ),
  "records joined": ({ numbers, how }) =>
    sentence(
      "Joined with another record of the same person",
      [
        numbers.length > 0 &&
          `tubes of that record numbered anew: ${numbers.map((n) => n.number).join(", ")}`,
      ],
      how,
    ),
  reconciled: ({ about, how, sides }) =>
    sentence(
      "Reconciled",
      [
        about,
        ...sides.map(({ number, side }) =>
          toldFact(side, {
            what: `tube ${number}: side`,
            print: (word) => `tube ${number}: ${word}`,
            telling: "marked",
          }),
        ),
      ],
      how,
    ),
};
