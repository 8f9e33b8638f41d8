import type { Given } from "#shared/case/case-schema.ts";
import type { Json } from "#shared/case/json.ts";
import type { Looking } from "#shared/case/looking.ts";
import { whyAnswer } from "#shared/case/steps-answer.ts";
import type { ClinicCalendar } from "#shared/day/clinic-days.ts";
import type { Protocol } from "#shared/protocol/protocol.ts";
import type { Books } from "#shared/step/open-steps.ts";
import { movedSteps } from "#shared/step/repinned.ts";
import type { OpenStep } from "#shared/step/step.ts";
import { jointWindow } from "#shared/visit/window.ts";

/** Steps that a visit of the clinic answers. */
const visited = ["exchange", "remove or exchange", "remove"] as const;

const ofVisit = ({ kind, tubeId }: OpenStep): boolean =>
  tubeId !== null && visited.some((one) => one === kind);

const windowAnswer = ({ kind, earliest, target, latest, why, pins }: OpenStep): Json => ({
  step: kind,
  earliest,
  target,
  latest,
  version: pins.protocol,
  why: whyAnswer(why),
});

/** The rows with the three days of some of them changed, as the next version of the table. */
function changedRows(protocol: Protocol, rows: NonNullable<Given<"window">["newRows"]>): Protocol {
  const intervals = protocol.intervals.map((row) => ({ ...row, ...rows[row.id] }));
  return { ...protocol, version: protocol.version + 1, intervals };
}

/** What a changed row or calendar would propose; the dates that stand are the ones above. */
function proposedBy(given: Given<"window">, { state, books, protocol }: Looking): Json {
  const { newRows = {}, newCalendar } = given;
  const stands = books.calendar(1);
  const next = changedRows(protocol, newRows);
  const calendar: ClinicCalendar = { ...stands, ...newCalendar, version: stands.version + 1 };
  const both: Books = {
    ...books,
    protocol: (version) => (version === next.version ? next : protocol),
    calendar: (version) => (version === calendar.version ? calendar : stands),
  };
  const pins = { protocol: next.version, calendar: calendar.version };
  return movedSteps(state, both, pins).map(({ tubeId, kind, stood, proposed }) => ({
    tube: tubeId,
    step: kind,
    stood: stood && { earliest: stood.earliest, target: stood.target, latest: stood.latest },
    proposed: proposed && {
      earliest: proposed.earliest,
      target: proposed.target,
      latest: proposed.latest,
    },
  }));
}

/** The window of each tube with where it comes from, of one visit for all of them, and what changed tables would propose. */
export function windowsAnswer(given: Given<"window">, looking: Looking): Json {
  const steps = looking.steps.filter(ofVisit);
  const windows = steps.flatMap(({ tubeId, earliest, target, latest }) =>
    tubeId === null ? [] : [{ tubeId, window: { earliest, target, latest } }],
  );
  const { earliest, target, latest, latestOf, early } = jointWindow(windows);
  return {
    tubes: Object.fromEntries(steps.map((step) => [step.tubeId ?? "", windowAnswer(step)])),
    joint: { earliest, target, latest, latestOf, early },
    proposed: proposedBy(given, looking),
  };
}
