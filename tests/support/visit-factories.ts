import { day } from "#shared/day/day.ts";
import type { Payload } from "#shared/tube/payloads.ts";
import type { ActOnTube, VisitPlace } from "#shared/visit/visit.ts";
import { minute } from "#tests/factories/visit.ts";
import { apart, type Entry, type Said, tell } from "#tests/support/factories.ts";

export const here = (from = "09:30", minutes = 30, roomId = "room-1"): VisitPlace & { kind: "here" } => ({
  kind: "here",
  roomId,
  from: minute(from),
  minutes,
});

type Booked = Partial<Omit<Payload<"visit booked">, "tubes" | "on">> & {
  readonly tubes?: readonly ActOnTube[];
  /** Day of the visit; `on` is the day of the entry. */
  readonly visitOn?: string;
};

/** Booked on 1 September for Wednesday 4 November 2026, 09:30, an exchange of the first tube. */
export const visitBooked = ({
  tubes = [{ tubeId: "tube-1", act: "exchange" }],
  visitOn = "2026-11-04",
  ...said
}: Said & Booked = {}): Entry => {
  const { of, rest } = apart(said);
  const plain = { state: "booked" as const, place: here(), urgent: false, needs: [], notOn: [], note: null };
  const named = tubes.map(({ tubeId: tube, act }, n) => ({ tube, number: n + 1, act }));
  return tell(
    "visit booked",
    { ...plain, ...rest, tubes: named, on: day(visitOn) },
    { id: "visit-1", on: "2026-09-01", ...of },
  );
};

type Moved = Partial<Omit<Payload<"visit moved">, "on">> & { readonly visitOn?: string };

export const visitMoved = ({ visitOn = "2026-11-05", ...said }: Said & Moved = {}): Entry => {
  const { of, rest } = apart(said);
  const plain = { visit: "visit-1", place: here(), urgent: false, by: null, reason: null };
  return tell("visit moved", { ...plain, ...rest, on: day(visitOn) }, { on: "2026-09-02", ...of });
};

export const visitNoted = (said: Said & Partial<Payload<"visit noted">> = {}): Entry => {
  const { of, rest } = apart(said);
  const plain = { visit: "visit-1", state: "confirmed" as const, by: null, reason: null };
  return tell("visit noted", { ...plain, ...rest }, { on: "2026-11-04", ...of });
};

export const visitPrepared = (said: Said & Partial<Payload<"visit prepared">> = {}): Entry => {
  const { of, rest } = apart(said);
  const plain = {
    visit: "visit-1",
    thing: "escort" as const,
    state: "settled" as const,
    by: null,
    says: null,
  };
  return tell("visit prepared", { ...plain, ...rest }, { on: "2026-09-03", ...of });
};
