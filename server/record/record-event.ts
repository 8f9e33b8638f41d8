import type { Database } from "#db/sqlite.ts";
import { inAct } from "#server/act.ts";
import { newId } from "#server/ids.ts";
import { append } from "#server/record/append.ts";
import { formContext } from "#server/record/form-context.ts";
import { loadRecord } from "#server/record/load-record.ts";
import { withWhatWasSeen } from "#server/record/with-what-was-seen.ts";
import type { Person } from "#shared/access/person.ts";
import { DomainError } from "#shared/errors/refusal.ts";
import type { Submit } from "#shared/record/act.ts";
import { eventForms, type FormKind } from "#shared/record/event-forms.ts";
import type { Texts } from "#shared/record/field-spec.ts";
import { tubesNamed } from "#shared/record/tubes-named.ts";

export type Doing = { readonly db: Database; readonly staff: Pick<Person, "id"> };

export type Submitted = Submit & { readonly patientId: string; readonly tubeId?: string };

/** What a saved form answers: what to look at next, and what to undo. */
export type RecordedAct = {
  readonly actId: string;
  readonly patientId: string;
  readonly tubeId: string | null;
  readonly eventIds: readonly string[];
  /** What was typed, kept with the act so that a correction opens with it. */
  readonly typed: Texts;
};

/**
 * Records what one form says: reads the typed texts again, decides, appends, projects, in one act. Throws DomainError with every
 * field that is to be mended; nothing is written then.
 */
export function recordEvent({ db, staff }: Doing, form: FormKind, input: Submitted): RecordedAct {
  const { actId, patientId, lastSeen, texts } = input;
  return inAct({ db, staff, actId, command: `record: ${form}`, input }, (tx, at) => {
    const loaded = loadRecord(tx, patientId);
    const context = formContext(tx, at, { patientId, tubeId: input.tubeId ?? null, loaded });
    const read = eventForms[form].read(texts, context);
    if (!read.ok) throw new DomainError(read.refusals);
    const entry = withWhatWasSeen(tx, read.entry, { tubeId: input.tubeId ?? null, amends: null });
    const { kind, when, time, payload } = entry;
    const tubes = tubesNamed(entry, context);
    const command = {
      eventId: newId(),
      kind,
      tubes,
      when,
      time,
      daySequence: 0,
      payload,
      amends: null,
      lastSeen,
    };
    const events = append(tx, { patientId, actId, staffId: staff.id, at, loaded }, [command]);
    return {
      actId,
      patientId,
      tubeId: tubes.at(-1) ?? null,
      eventIds: events.map(({ id }) => id),
      typed: texts,
    };
  });
}
