"use client";

import { type KeyboardEvent, type ReactNode, useState } from "react";
import { api } from "#app/_trpc/client.ts";
import { fieldId } from "#app/ui/field.tsx";
import { Now } from "#app/ui/now.tsx";
import { newActId } from "#app/ui/recording/act-id.ts";
import type { LaidOut } from "#app/ui/recording-form.tsx";
import { RecordingForm } from "#app/ui/recording-form.tsx";
import { UndoNotice } from "#app/ui/undo-notice.tsx";
import { type SendSlot, sendSlot } from "#app/visit/send-slot.ts";
import { type SlotsPage, visitHref } from "#app/visit/visit-pages.ts";
import { printDay } from "#shared/day/print-day.ts";
import { parsed, unread } from "#shared/errors/refusal.ts";
import type { FieldSpecs, Texts } from "#shared/record/field-spec.ts";
import { capital } from "#shared/words/capital.ts";
import { printMinute } from "#shared/words/offers.ts";
import styles from "./visit.module.css";

type Picked = { readonly slot: Texts };

type SlotPickerProps = {
  readonly slots: Pick<SlotsPage, "offers" | "rooms" | "minutes">;
  readonly to: SendSlot;
  readonly lastSeen: number;
  readonly leaveTo: string;
};

/** A slot on offer as it would be typed: the server reads and checks it like any other. */
function typedSlots({ offers, rooms, minutes }: SlotPickerProps["slots"]): readonly Texts[] {
  return offers.map(({ slot }) => ({
    on: printDay(slot.on),
    at: printMinute(slot.from),
    room: rooms.find(({ id }) => id === slot.roomId)?.name ?? "",
    minutes: String(minutes ?? slot.minutes),
  }));
}

const fieldsOf = (typed: readonly Texts[]): FieldSpecs<Picked> => ({
  slot: {
    label: "Slot",
    initial: "1",
    read: (text) => {
      const slot = typed[Number(text) - 1];
      return slot === undefined ? unread("choice-unknown", { text }) : parsed(slot);
    },
  },
});

/** A digit picks a slot; Enter books it. */
function pickByDigit(event: KeyboardEvent<HTMLFieldSetElement>): void {
  const input = event.currentTarget.querySelector<HTMLInputElement>(
    `input[value="${CSS.escape(event.key)}"]`,
  );
  if (input === null) return;
  event.preventDefault();
  input.checked = true;
  input.focus();
}

/** The three slots, the best one picked: one key to take another, Enter to book. */
export function SlotPicker({ slots, to, lastSeen, leaveTo }: SlotPickerProps): ReactNode {
  const typed = typedSlots(slots);
  const isMove = to.kind === "move";
  return (
    <RecordingForm
      fields={fieldsOf(typed)}
      act={isMove ? "Move to this slot" : "Book this slot"}
      enter={isMove ? "moves" : "books"}
      lastSeen={lastSeen}
      draft={null}
      drafts={{ save: async () => undefined, drop: async () => undefined }}
      send={(texts, act) => sendSlot(to, typed[Number(texts.slot) - 1] ?? {}, act)}
      leaveTo={leaveTo}
      layout={({ texts, problems }) => <Slots slots={slots} texts={texts} problems={problems} />}
      saved={(result) => <Booked result={result} isMove={isMove} />}
    />
  );
}

type BookedProps = {
  readonly result: { readonly actId: string; readonly patientId: string; readonly visitId: string };
  readonly isMove: boolean;
};

/**
 * What stands once a slot is taken. The page round it is not asked anew: it asked for slots of tubes that have a visit now, and would
 * have none to offer.
 */
export function Booked({ result: { actId, patientId, visitId }, isMove }: BookedProps): ReactNode {
  const [undoId] = useState(newActId);
  return (
    <UndoNotice
      said={isMove ? "The visit is moved." : "The visit is booked."}
      undo={() => api.record.undone.mutate({ actId: undoId, undoes: actId })}
    >
      <a href={visitHref(patientId, visitId)}>To the visit</a>
      <a href={`/patients/${patientId}`}>To the patient</a>
    </UndoNotice>
  );
}

type SlotsProps = Pick<SlotPickerProps, "slots"> & Pick<LaidOut, "texts" | "problems">;

function Slots({ slots, texts, problems }: SlotsProps): ReactNode {
  return (
    <fieldset className={styles.slots} onKeyDown={pickByDigit}>
      <legend>Three slots: a digit picks one</legend>
      {slots.offers.map((offer, n) => (
        <label key={offer.says} className={styles.slot}>
          <input
            type="radio"
            name="slot"
            id={n === 0 ? fieldId("slot") : undefined}
            value={n + 1}
            defaultChecked={texts.slot === String(n + 1) || (texts.slot === undefined && n === 0)}
          />
          <span>
            <b>
              {n + 1} {offer.says}
            </b>
            <span className={styles.why}>
              {offer.place === "past the latest" ? (
                <Now>{capital(offer.stands)}.</Now>
              ) : (
                `${capital(offer.stands)}.`
              )}
            </span>
            <span className={styles.why}>Why not sooner: {offer.notSooner}</span>
          </span>
        </label>
      ))}
      {problems.map(({ sentence }) => (
        <p key={sentence} className={styles.problem}>
          {sentence}
        </p>
      ))}
    </fieldset>
  );
}
