import type { NotedState, Visit } from "#shared/visit/visit.ts";

/** What can be said of a visit, by the last word of its address. */
export const visitPageActs = {
  settle: "Note what is settled",
  confirm: "Note that it is confirmed",
  arrive: "Note that the patient is here",
  move: "Move the visit",
  missed: "Note that nobody came",
  cancel: "Cancel the visit",
  done: "Note that it is done without an entry",
} as const;
export type VisitPageAct = keyof typeof visitPageActs;

export const isVisitPageAct = (word: string): word is VisitPageAct => Object.hasOwn(visitPageActs, word);

/** Which state an act notes; the others note none. */
export const stateOfAct: Partial<Record<VisitPageAct, NotedState>> = {
  confirm: "confirmed",
  arrive: "arrived",
  missed: "did not attend",
  cancel: "cancelled",
  done: "done",
};

type Standing = Pick<Visit, "state" | "on" | "place">;

/** What may be said now, the likeliest first. */
export function actsNow({ state, on, place }: Standing, today: string): readonly VisitPageAct[] {
  const settle: readonly VisitPageAct[] = place.kind === "here" ? ["settle"] : [];
  if (state === "arrived") return ["done", ...settle, "cancel"];
  if (state !== "proposed" && state !== "booked" && state !== "confirmed") return [];
  const confirm: readonly VisitPageAct[] = state === "confirmed" ? [] : ["confirm"];
  if (on > today) return [...settle, ...confirm, "move", "cancel"];
  return ["arrive", "missed", ...settle, ...confirm, "move", "cancel"];
}
