import { addDays, later } from "#shared/day/day.ts";
import type { ProtocolRow } from "#shared/protocol/interval-row.ts";
import { rowFor } from "#shared/step/dated-steps.ts";
import { type Draft, single, type TubeQuestion, why } from "#shared/step/draft.ts";
import { tractTooYoung } from "#shared/step/tract-lines.ts";
import { gapsOf, insideIsKnown, stillToFindOut } from "#shared/tube/found-out.ts";
import type { Hospice, TubeState } from "#shared/tube/state.ts";
import type { StepKind } from "#shared/tube/step-kinds.ts";

/** A removal that was decided: by when, and what the row says against that day. */
export function removalDrafts(question: TubeQuestion): Draft[] {
  const { removal } = question.tube;
  if (removal === null) return [];
  const { by, decidedBy, reason, eventId } = removal;
  const answer = rowFor(question);
  const row: ProtocolRow | null = answer.found === "row" ? answer.row : null;
  const lines = [why("removal-decided", { by, decidedBy }, eventId)];
  if (reason !== null) lines.push(why("removal-reason", { reason }, eventId));
  lines.push(...tractTooYoung(question, row, { act: "remove", on: by, eventId }));
  return [{ kind: "remove", window: { earliest: null, target: by, latest: by }, why: lines }];
}

/** Handed over and not accepted: the record, with all its dates, is still this clinic's. */
export const handoverDrafts = ({ handover }: TubeState): Draft[] =>
  handover === null
    ? []
    : [
        single("handover", handover.recordedOn, [
          why("handed-over", { to: handover.to, person: handover.person }, handover.eventId),
        ]),
      ];

/** Insides that nobody knows matter when a wire is to go through them: from so many days before a planned exchange, by row. */
function insidesDrafts(tube: TubeState, { planning }: TubeQuestion["protocol"]): Draft[] {
  const row = planning?.findInsides ?? null;
  const on = tube.plannedExchange?.on ?? null;
  if (row === null || on === null || tube.plannedExchange === null || insideIsKnown(tube)) return [];
  const { withinDays: days, source } = row;
  const line = why("insides-unknown", { on, days, source }, tube.plannedExchange.eventId);
  return [single("find out", later(addDays(on, -days), tube.catheter.recordedOn), [line])];
}

/** What nobody knows of a tube and somebody must, and what a transfer left to be found out, until the record knows it. */
export function findOutDrafts({ tube, protocol }: TubeQuestion): Draft[] {
  const { catheter, toFindOut } = tube;
  const gaps = gapsOf(tube);
  const what = stillToFindOut(tube);
  const drafts = insidesDrafts(tube, protocol);
  if (gaps.length > 0)
    drafts.push(single("find out", catheter.recordedOn, [why("gap", { what: gaps.join(", ") })]));
  if (toFindOut === null || what.length === 0) return drafts;
  const { recordedOn, eventId, askWhom } = toFindOut;
  const line = why("to-find-out", { what: what.join(", "), askWhom }, eventId);
  return [...drafts, single("find out", recordedOn, [line])];
}

/** A tube that lies wholly inside is known to whoever carries it only where somebody has told them, in their language. */
export const tellDrafts = ({ role, told, catheter }: TubeState): Draft[] =>
  role !== "internal" || told !== null
    ? []
    : [single("tell of the tube", catheter.recordedOn, [why("not-told")])];

const stoppable: Readonly<Record<"calls" | "exchanges", readonly StepKind[]>> = {
  calls: ["call", "call back", "alternate contact", "letter", "ask the referrer", "ask again", "diary"],
  exchanges: ["exchange", "remove or exchange", "review", "balloon check", "anchors out"],
};

/**
 * In hospice: until somebody decides what goes on, that is asked and everything goes on. A decision holds until its day: what is stopped and
 * would fall due by then gives way to the step that asks again on that day; what is due later stands.
 */
export function underHospice(drafts: readonly Draft[], hospice: Hospice | null): Draft[] {
  if (hospice === null) return [...drafts];
  const { decision } = hospice;
  if (decision === null)
    return [
      ...drafts,
      single("hospice", hospice.recordedOn, [why("hospice-undecided", {}, hospice.eventId)]),
    ];
  const { until, calls, exchanges, decidedBy, team, eventId } = decision;
  const stopped = (kind: StepKind): boolean =>
    (calls === "stop" && stoppable.calls.includes(kind)) ||
    (exchanges === "stop" && stoppable.exchanges.includes(kind));
  const falls = ({ kind, window }: Draft): boolean =>
    stopped(kind) && (window.target ?? window.latest ?? until) <= until;
  const line = why("hospice-decided", { until, calls, exchanges, decidedBy, team }, eventId);
  return [...drafts.filter((draft) => !falls(draft)), single("hospice", until, [line])];
}
