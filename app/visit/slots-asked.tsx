import type { ReactNode } from "react";
import { ACT, type AskedSlots } from "#app/visit/asked-in-query.ts";
import type { SlotsPage } from "#app/visit/visit-pages.ts";
import { printNotOn } from "#shared/record/field/not-on-field.ts";
import { visitActs } from "#shared/visit/visit-acts.ts";
import { refusalSentence } from "#shared/words/refusals.ts";
import styles from "./visit.module.css";

type SlotsAskedProps = {
  readonly path: string;
  readonly slots: SlotsPage;
  readonly asked: AskedSlots;
};

/** For which tubes, and when the patient cannot come: a form that asks for the page again, by an address that can be kept. */
export function SlotsAsked({ path, slots, asked }: SlotsAskedProps): ReactNode {
  const { texts, unread } = asked;
  return (
    <form className={styles.asked} method="get" action={path} aria-label="What slots are asked for">
      {slots.inCare.map(({ tubeId, name, act }) => (
        <label key={tubeId} className={styles.tube}>
          <bdi>{name}</bdi>
          <select
            name={`${ACT}${tubeId}`}
            defaultValue={slots.tubes.find((tube) => tube.tubeId === tubeId)?.act ?? ""}
          >
            <option value="">not this time</option>
            {visitActs.map((one) => (
              <option key={one} value={one}>
                {one}
                {one === act ? " (next)" : ""}
              </option>
            ))}
          </select>
        </label>
      ))}
      <label>
        Cannot come on
        <input
          name="cannot"
          defaultValue={texts.notOn ?? printNotOn(slots.notOn)}
          placeholder="mon wed, fri pm"
          aria-invalid={unread.includes("notOn") || undefined}
        />
      </label>
      <label>
        Minutes
        <input
          name="minutes"
          inputMode="numeric"
          size={5}
          defaultValue={texts.minutes ?? ""}
          placeholder={slots.needs.minutes === null ? "" : String(slots.needs.minutes)}
          aria-invalid={unread.includes("minutes") || undefined}
        />
      </label>
      <label className={styles.flag}>
        <input type="checkbox" name="urgent" value="yes" defaultChecked={slots.urgent} /> Urgent: takes what
        is kept free
      </label>
      <button type="submit">Look again</button>
      {unread.map((what) => (
        <p key={what} className={styles.problem}>
          {what === "notOn"
            ? refusalSentence({ code: "weekdays-not-understood", args: { text: texts.notOn ?? "" } })
            : refusalSentence({ code: "visit-minutes-not-understood", args: { text: texts.minutes ?? "" } })}
        </p>
      ))}
    </form>
  );
}
