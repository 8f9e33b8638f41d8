import type { DayWindow } from "#shared/day/clinic-days.ts";
import type { AnchorRow } from "#shared/protocol/anchor-rows.ts";
import { startLines } from "#shared/step/dated-steps.ts";
import { type Draft, dueOn, exampleLines, firstWindow, type TubeQuestion, why } from "#shared/step/draft.ts";
import type { Why } from "#shared/step/step.ts";
import { known } from "#shared/tube/certainty.ts";
import { saysNone, skinHoldIn } from "#shared/tube/skin-hold.ts";
import type { Clock, TubeState } from "#shared/tube/state.ts";
import type { SkinHold } from "#shared/tube/vocabulary.ts";

/**
 * What there is to take out: what the fixation names, else what the row has until the fixation or an entry says that there is none. An exchange puts no
 * anchors in again, but may put in another suture.
 */
function toTakeOut({ fixation, anchorsOut }: TubeState, row: AnchorRow): SkinHold | null {
  const said = known(fixation);
  const named = said === undefined ? null : skinHoldIn(said);
  if (named !== null) return named;
  if (said !== undefined && saysNone(said, row.holds)) return null;
  const isOut = anchorsOut === "this one" || (anchorsOut !== null && row.holds === "anchors");
  return isOut ? null : row.holds;
}

const countedFrom = (clock: Clock): Why[] =>
  clock.since.earliest === null ? [why("start-unknown", {}, clock.eventId)] : startLines(clock);

/** Anchors or a suture due out by the row of the kind: anchors counted from the puncture, a suture from the catheter in place. */
export function anchorDrafts({ tube, age, protocol }: TubeQuestion): Draft[] {
  const row = protocol.anchors.find(({ kind }) => kind === tube.kind);
  const holds = row === undefined ? null : toTakeOut(tube, row);
  if (row === undefined || holds === null) return [];
  const clock = holds === "anchors" ? tube.tract : tube.catheter;
  const { from, to, source } = row;
  const lines = [
    why("anchors-row", { holds, from, to, source }),
    why("held-at-skin", { fixation: known(tube.fixation) ?? null }),
  ];
  const draft = (window: DayWindow, more: readonly Why[]): Draft[] => [
    { kind: "anchors out", window, why: [...lines, ...more, ...exampleLines(protocol)] },
  ];
  if (age === "under 18")
    return draft(dueOn(clock.recordedOn), [why("no-example-for-child", { kind: tube.kind })]);
  const unsure = age === "unknown" ? [why("age-unknown")] : [];
  return draft(firstWindow(clock, row), [...countedFrom(clock), ...unsure]);
}
