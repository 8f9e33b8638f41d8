import type { DayHalf } from "#shared/day/clinic-days.ts";
import type { Day, Weekday } from "#shared/day/day.ts";
import type { PrerequisiteThing } from "#shared/visit/prerequisite-things.ts";
import type { AnswerState } from "#shared/visit/prerequisites.ts";
import type { Ability, Booking, Minute } from "#shared/visit/room.ts";
import type { VisitAct } from "#shared/visit/visit-acts.ts";

/** From held for somebody who has not answered yet, to what came of it. */
export const visitStates = [
  "proposed",
  "booked",
  "confirmed",
  "arrived",
  "done",
  "did not attend",
  "cancelled",
] as const;
export type VisitState = (typeof visitStates)[number];
/** What an entry can say of one that is booked. */
export type NotedState = Exclude<VisitState, "proposed">;

/** Still to come, or running. */
export const openVisitStates = ["proposed", "booked", "confirmed", "arrived"] as const;

/** Where a visit is: in a room of the clinic, or in the hospital's own book, which counts as booked here. */
export type VisitPlace =
  | { readonly kind: "here"; readonly roomId: string; readonly from: Minute; readonly minutes: number }
  | { readonly kind: "elsewhere"; readonly where: string; readonly from: Minute | null };

/** A tube of a visit, and what is done with it. */
export type ActOnTube = { readonly tubeId: string; readonly act: VisitAct };

/** How one of the things that are to be settled before a visit stands, by its newest entry. */
export type Prepared = {
  readonly thing: PrerequisiteThing;
  readonly state: AnswerState;
  readonly by: string | null;
  readonly says: string | null;
  readonly eventId: string;
};

/** Days and halves on which the patient cannot come. */
export type NotOn = readonly { readonly weekday: Weekday; readonly half: DayHalf | null }[];

/** One visit of a patient, as its entries and those of its tubes make it. */
export type Visit = {
  /** That of the entry that booked it. */
  readonly id: string;
  readonly tubes: readonly ActOnTube[];
  /** Of which tubes it is on record what came of it; `did` where something was done, not only the record ended. */
  readonly answered: readonly { readonly tubeId: string; readonly did: boolean }[];
  readonly state: VisitState;
  readonly on: Day;
  readonly place: VisitPlace;
  /** For a tube that is out or partly out, or said to be: it takes what is kept free. */
  readonly urgent: boolean;
  readonly needs: readonly Ability[];
  readonly notOn: NotOn;
  readonly note: string | null;
  /** Entries that changed it since it was booked: what a calendar tells versions apart by. */
  readonly revision: number;
  /** How often it was moved. */
  readonly moved: number;
  /** Who cancelled it or told what came of it, and why, by the newest entry that said so. */
  readonly by: string | null;
  readonly reason: string | null;
  readonly prepared: readonly Prepared[];
  readonly bookedOn: Day;
  /** The newest entry that speaks of it, and its day. */
  readonly eventId: string;
  readonly recordedOn: Day;
};

/** Of which nothing is on record yet. */
export const openTubes = ({ tubes, answered }: Pick<Visit, "tubes" | "answered">): readonly ActOnTube[] =>
  tubes.filter(({ tubeId }) => !answered.some((one) => one.tubeId === tubeId));

export const isOpenVisit = ({ state }: Pick<Visit, "state">): boolean =>
  openVisitStates.some((open) => open === state);

/** The time of a room that a visit takes; null where it takes none of ours, or no longer. */
export function bookingOf({
  id,
  on,
  place,
  state,
}: Pick<Visit, "id" | "on" | "place" | "state">): Booking | null {
  if (place.kind === "elsewhere" || state === "cancelled" || state === "did not attend") return null;
  const { roomId, from, minutes } = place;
  return { id, roomId, on, from, minutes };
}
