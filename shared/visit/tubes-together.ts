import type { DayWindow } from "#shared/day/clinic-days.ts";
import type { OpenStep } from "#shared/step/step.ts";
import type { TubeState } from "#shared/tube/state.ts";
import type { ActOnTube } from "#shared/visit/visit.ts";
import type { VisitAct } from "#shared/visit/visit-acts.ts";
import { jointWindow } from "#shared/visit/window.ts";
import { windowOf } from "#shared/visit/window-of.ts";

type Dated = Pick<OpenStep, "tubeId" | "kind" | "dueOn" | keyof DayWindow>;
type Tube = Pick<TubeState, "id" | "status">;

/** What a tube is most likely seen for, by its open steps; null where none asks for a visit. */
export function likelyAct(steps: readonly Dated[], { id, status }: Tube): VisitAct | null {
  const kinds = steps.filter(({ tubeId }) => tubeId === id).map(({ kind }) => kind);
  if (status !== "in") return status === "out, undecided" ? "exchange" : null;
  if (kinds.includes("remove")) return "removal";
  if (kinds.includes("tube check") || kinds.includes("reposition")) return "check";
  if (kinds.includes("exchange") || kinds.includes("remove or exchange") || kinds.includes("part out"))
    return "exchange";
  return kinds.includes("review") ? "check" : null;
}

/** Due soonest first; a tube that is out before all. */
function inOrder(steps: readonly Dated[], tubes: readonly Tube[]): readonly Tube[] {
  const dueOf = ({ id }: Tube): string =>
    steps
      .filter(({ tubeId }) => tubeId === id)
      .map(({ dueOn }) => dueOn)
      .toSorted()[0] ?? "9999";
  const rank = (tube: Tube): string => `${tube.status === "in" ? 1 : 0} ${dueOf(tube)} ${tube.id}`;
  return tubes.toSorted((a, b) => (rank(a) < rank(b) ? -1 : 1));
}

/**
 * Which tubes of a patient come together in one visit: the one that is asked for, else the one that is due first, and each other that
 * would be done before neither its own earliest date nor past the earlier latest. Of a tube that is out, it alone: it does not wait.
 */
export function tubesTogether(
  steps: readonly Dated[],
  tubes: readonly Tube[],
  first: string | null,
): readonly ActOnTube[] {
  const likely = inOrder(steps, tubes).flatMap((tube) => {
    const act = likelyAct(steps, tube);
    return act === null ? [] : [{ tubeId: tube.id, act, out: tube.status !== "in" }];
  });
  // A review may need no visit: what has to be done with a catheter comes before it.
  const due = likely.find(({ act }) => act !== "check") ?? likely[0];
  const asked =
    first === null
      ? due
      : (likely.find(({ tubeId }) => tubeId === first) ?? {
          tubeId: first,
          act: "check" as const,
          out: false,
        });
  if (asked === undefined) return [];
  const plain = ({ tubeId, act }: ActOnTube): ActOnTube => ({ tubeId, act });
  if (asked.out) return [plain(asked)];
  const windowed = ({ tubeId, act }: ActOnTube) => ({ tubeId, window: windowOf(steps, tubeId, act) });
  let chosen: readonly ActOnTube[] = [plain(asked)];
  for (const other of likely) {
    if (other.out || other.tubeId === asked.tubeId || other.act === "check") continue;
    const { target, early } = jointWindow([...chosen, other].map(windowed));
    if (target !== null && early.length === 0) chosen = [...chosen, plain(other)];
  }
  return chosen;
}
