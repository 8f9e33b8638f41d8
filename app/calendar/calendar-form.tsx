"use client";

import { type ReactNode, useState } from "react";
import { api } from "#app/_trpc/client.ts";
import { type Looked, Touched } from "#app/calendar/touched.tsx";
import { draftStore } from "#app/ui/recording/draft-store.ts";
import type { StoredDraft } from "#app/ui/recording/use-draft.ts";
import { RecordingForm } from "#app/ui/recording-form.tsx";
import type { ClinicCalendar, Closure, HalfDay } from "#shared/day/clinic-days.ts";
import type { Day } from "#shared/day/day.ts";
import type { Refusal } from "#shared/errors/refusal.ts";
import type { CalendarAsked } from "#shared/record/calendar/asked.ts";
import { closingForm } from "#shared/record/calendar/closing-form.ts";
import { halfDayForm } from "#shared/record/calendar/half-day-form.ts";
import { weekdaysForm } from "#shared/record/calendar/weekdays-form.ts";
import type { FieldSpecs, Texts } from "#shared/record/field-spec.ts";

type CalendarFormProps<V> = {
  readonly fields: FieldSpecs<V>;
  readonly check?: (values: V) => readonly Refusal[];
  readonly asked: (texts: Texts) => CalendarAsked;
  readonly press: string;
  readonly seen: number;
  readonly kept: Kept;
};

/** Where what is typed is kept until it is saved, and what is kept there. */
export type Kept = { readonly form: string; readonly subject: string; readonly draft: StoredDraft | null };

/** Typed, looked at for whom it touches, then made; what was typed is kept until it is. */
function CalendarForm<V>(props: CalendarFormProps<V>): ReactNode {
  const { fields, check, asked, press, seen, kept } = props;
  const store = draftStore(kept.form, kept.subject);
  const [looked, setLooked] = useState<Looked | null>(null);
  const [draft, setDraft] = useState(kept.draft);

  const look = async (texts: Texts, actId: string): Promise<void> => {
    const change = asked(texts);
    const preview = await api.calendar.preview.query({ seen, asked: change, page: 1 });
    const content = { actId, texts };
    await store.save(content).catch(() => undefined);
    setDraft(content);
    setLooked({ actId, seen, asked: change, preview });
  };

  if (looked !== null)
    return (
      <Touched
        looked={looked}
        press={press}
        made={store.drop}
        back={
          <button type="button" onClick={() => setLooked(null)}>
            Change what is typed
          </button>
        }
      />
    );
  return (
    <RecordingForm
      fields={fields}
      {...(check && { check })}
      act="Look at whom it touches"
      enter="looks, and saves nothing yet"
      lastSeen={0}
      draft={draft}
      drafts={{ save: store.save, drop: async () => undefined }}
      send={(texts, { actId }) => look(texts, actId)}
      leaveTo="/calendar"
      saved={() => null}
    />
  );
}

type Of = { readonly today: Day; readonly calendar: ClinicCalendar; readonly kept: Kept };

/** Close the clinic, or move a closure. */
export function ClosingForm({ kept, moves, ...of }: Of & { readonly moves: Closure | null }): ReactNode {
  const context = { ...of, moves };
  return (
    <CalendarForm
      fields={closingForm.fields(context)}
      check={(values) => closingForm.check?.(values, context) ?? []}
      asked={(texts) => ({ kind: "close", texts, ...(moves && { moves: moves.from }) })}
      press={moves === null ? "Close the clinic" : "Move the closure"}
      seen={of.calendar.version}
      kept={kept}
    />
  );
}

/** Open the clinic for half a day, or move such a half day. */
export function HalfDayForm({ kept, moves, ...of }: Of & { readonly moves: HalfDay | null }): ReactNode {
  const context = { ...of, moves };
  return (
    <CalendarForm
      fields={halfDayForm.fields(context)}
      check={(values) => halfDayForm.check?.(values, context) ?? []}
      asked={(texts) => ({ kind: "open half a day", texts, ...(moves && { moves: moves.on }) })}
      press={moves === null ? "Open half a day" : "Move the half day"}
      seen={of.calendar.version}
      kept={kept}
    />
  );
}

/** Set the days of the week on which the clinic is open. */
export function WeekdaysForm({ calendar, kept }: Omit<Of, "today">): ReactNode {
  return (
    <CalendarForm
      fields={weekdaysForm.fields({ calendar })}
      asked={(texts) => ({ kind: "open weekdays", texts })}
      press="Set the open weekdays"
      seen={calendar.version}
      kept={kept}
    />
  );
}
