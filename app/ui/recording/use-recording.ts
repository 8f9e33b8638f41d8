import { useRouter } from "next/navigation";
import { type RefObject, useEffect, useEffectEvent, useRef, useState } from "react";
import { newActId } from "#app/ui/recording/act-id.ts";
import { type Sent, sendAct } from "#app/ui/recording/send-act.ts";
import { type DraftStore, type StoredDraft, useDraft } from "#app/ui/recording/use-draft.ts";
import type { RefusalCode } from "#shared/errors/codes.ts";
import type { Refusal } from "#shared/errors/refusal.ts";
import { type FieldSpecs, namesOf, readFields, type Texts } from "#shared/record/field-spec.ts";

/** The page that was typed on is old. */
const staleCodes: readonly RefusalCode[] = [
  "changed-meanwhile",
  "draft-changed",
  "calendar-changed",
  "rooms-changed",
];

/** What goes with every act: its id, and the sequence of the last event of the patient that the page had seen. */
export type Act = { readonly actId: string; readonly lastSeen: number };

export type RecordingPlan<V, Result> = {
  readonly fields: FieldSpecs<V>;
  /** What the fields say against one another, asked before anything is sent; the server asks again. */
  readonly check?: (values: V) => readonly Refusal[];
  /** What may be a slip by what the fields say together, by field: asked beside it, and blocks nothing. */
  readonly doubts?: (values: Partial<V>) => Readonly<Partial<Record<string, string>>>;
  readonly lastSeen: number;
  /** What was typed before and not saved; loaded with the page. */
  readonly draft: StoredDraft | null;
  readonly drafts: DraftStore;
  /** Calls the API with what was typed, which the server reads again. Sent again with the same act id when no answer came. */
  readonly send: (texts: Texts, act: Act) => Promise<Result>;
  /** Where Escape leads: what was typed is kept. */
  readonly leaveTo: string;
};

export type Phase<Result> =
  | { readonly kind: "opening" }
  | { readonly kind: "typing" }
  | { readonly kind: "sending" }
  | { readonly kind: "unanswered" }
  | { readonly kind: "saved"; readonly result: Result };

/** The fields hold what is typed; this reads it from them, so that keys pressed before the script ran count too. */
function textsIn<V>(form: HTMLFormElement | null, fields: FieldSpecs<V>): Texts {
  const data = form === null ? new FormData() : new FormData(form);
  return Object.fromEntries(namesOf(fields).map((name) => [name, String(data.get(name) ?? "")]));
}

export const openingTexts = <V>({
  fields,
  draft,
}: Pick<RecordingPlan<V, never>, "fields" | "draft">): Texts =>
  Object.fromEntries(namesOf(fields).map((name) => [name, draft?.texts[name] ?? fields[name].initial ?? ""]));

/** A recording form's life: opened, typed in, sent once, refused or saved. */
export function useRecording<V, Result>(
  plan: RecordingPlan<V, Result>,
  form: RefObject<HTMLFormElement | null>,
) {
  const { fields, lastSeen } = plan;
  const [actId] = useState(() => plan.draft?.actId ?? newActId());
  const [texts, setTexts] = useState(() => openingTexts(plan));
  const [phase, setPhase] = useState<Phase<Result>>({ kind: "opening" });
  const [refusals, setRefusals] = useState<readonly Refusal[]>([]);
  const [attempt, setAttempt] = useState(0);
  const sending = useRef(false);
  const draft = useDraft(plan.drafts, actId);
  const router = useRouter();

  const opened = useEffectEvent(() => {
    setTexts(textsIn(form.current, fields));
    setPhase({ kind: "typing" });
  });
  useEffect(() => opened(), []);

  const typed = (field: string): void => {
    const now = textsIn(form.current, fields);
    setTexts(now);
    setRefusals((old) => old.filter((refusal) => refusal.field !== undefined && refusal.field !== field));
    draft.changed(now);
  };

  const refused = (list: readonly Refusal[]): void => {
    setRefusals(list);
    setAttempt((count) => count + 1);
    setPhase({ kind: "typing" });
  };

  const arrived = async (sent: Sent<Result>): Promise<void> => {
    if (sent.kind === "refused") {
      // The page round the form shows what somebody recorded since; saving again then means having seen it.
      if (sent.refusals.some(({ code }) => staleCodes.includes(code))) router.refresh();
      return refused(sent.refusals);
    }
    if (sent.kind === "saved") await draft.drop();
    setPhase(sent);
  };

  const submit = async (): Promise<void> => {
    if (sending.current) return;
    const typedTexts = textsIn(form.current, fields);
    const reading = readFields(fields, typedTexts);
    if (!reading.ok) return refused(reading.refusals);
    const against = plan.check?.(reading.values) ?? [];
    if (against.length > 0) return refused(against);
    sending.current = true;
    setRefusals([]);
    setPhase({ kind: "sending" });
    await arrived(await sendAct(() => plan.send(typedTexts, { actId, lastSeen })));
    sending.current = false;
  };

  const leave = async (): Promise<void> => {
    await draft.keep();
    location.assign(plan.leaveTo);
  };

  return { texts, phase, refusals, attempt, typed, submit, leave };
}
