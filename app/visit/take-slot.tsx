import type { ReactNode } from "react";
import type { StoredDraft } from "#app/ui/recording/use-draft.ts";
import type { SendSlot } from "#app/visit/send-slot.ts";
import { SlotPicker } from "#app/visit/slot-picker.tsx";
import { SlotsStandOn } from "#app/visit/slots-stand-on.tsx";
import { TypedSlot } from "#app/visit/typed-slot.tsx";
import type { SlotsPage } from "#app/visit/visit-pages.ts";
import { printDay } from "#shared/day/print-day.ts";
import type { Texts } from "#shared/record/field-spec.ts";
import styles from "./visit.module.css";

type TakeSlotProps = {
  readonly slots: SlotsPage;
  readonly to: SendSlot;
  readonly begun: Texts;
  readonly lastSeen: number;
  readonly draft: StoredDraft | null;
  readonly leaveTo: string;
};

/** The three slots first; what they stand on; another slot, typed, which stands open where a day's page filled it in. */
export function TakeSlot({ slots, to, begun, lastSeen, draft, leaveTo }: TakeSlotProps): ReactNode {
  const { today, rooms, minutes, notOn, offers } = slots;
  const typed = (
    <TypedSlot
      to={to}
      context={{ today, rooms, minutes, notOn }}
      begun={begun}
      lastSeen={lastSeen}
      draft={draft}
      leaveTo={leaveTo}
    />
  );
  const filledIn = Object.keys(begun).length > 0 || draft !== null;
  const query = moveQuery(to);
  const picker =
    offers.length > 0 ? (
      <SlotPicker slots={{ offers, rooms, minutes }} to={to} lastSeen={lastSeen} leaveTo={leaveTo} />
    ) : (
      <p role="status">{noneWords(slots)}</p>
    );
  return (
    <>
      {filledIn ? typed : picker}
      <section className={styles.section}>
        <h2>What the slots stand on</h2>
        <SlotsStandOn slots={slots} />
      </section>
      <details className={styles.section} open={offers.length === 0}>
        <summary>{filledIn ? "The three slots instead" : "Another day or time, or booked elsewhere"}</summary>
        {filledIn ? picker : typed}
      </details>
      <p className={styles.section} data-screen-only>
        Look at <a href={`/visits?${query}`}>a day</a> or <a href={`/visits/week?${query}`}>a week</a>, and
        choose what is free there.
      </p>
    </>
  );
}

/** What a day's page needs to lead back here. */
function moveQuery(to: SendSlot): string {
  if (to.kind === "move") return new URLSearchParams({ moves: `${to.patientId}/${to.visitId}` }).toString();
  const tubes = to.tubes.map(({ tubeId, act }) => `${tubeId}:${act}`).join(",");
  return new URLSearchParams({ for: to.patientId, tubes }).toString();
}

function noneWords({ minutes, rooms, until }: SlotsPage): string {
  if (rooms.length === 0)
    return "The clinic has no rooms here yet, so that no slot can be offered. A lead adds them; what is booked elsewhere can be typed below.";
  if (minutes === null)
    return "No row says how long this takes, so that no slot can be offered. Type the minutes above and look again.";
  return `No slot is free${until === null ? "" : ` until ${printDay(until)}`}. Ask for fewer tubes, another day, or move another visit.`;
}
