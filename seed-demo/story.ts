import type { StaffRole } from "#shared/access/roles.ts";
import type { FormKind } from "#shared/record/event-forms.ts";
import type { Texts } from "#shared/record/field-spec.ts";
import type { NotedState } from "#shared/visit/visit.ts";
import type { VisitAct } from "#shared/visit/visit-acts.ts";

/** When somebody sat down to type: days before the demo's start day, the clock time, and who. */
type Typing = { readonly daysAgo: number; readonly at: string; readonly by: StaffRole };

/** One thing that was recorded: the form and its texts. */
export type Recording = Typing & {
  readonly form: FormKind | "reading";
  /** The story's own word for the tube: given by the form that opens it, named by all later ones. */
  readonly tube?: string;
  /** For a conversion: the word of the tube that it opens. */
  readonly opens?: string;
  /** The story's own word for the entry, where a later act corrects it. */
  readonly entry?: string;
  readonly texts: Texts;
};

/** An entry put right, taken out of what counts, or its whole act taken back. */
export type Correcting = Typing & {
  readonly form: "amended" | "voided" | "undone";
  /** The word of the entry that it corrects. */
  readonly of: string;
  readonly texts: Texts;
};

/** Another record of the same person, by its number, joined into this one. */
export type Joining = Typing & {
  readonly form: "records joined";
  readonly other: string;
  readonly texts: Texts;
};

/** A visit: booked in the first slot that is free from a day on, or elsewhere; moved; said of. */
export type Visiting = Typing & {
  /** The story's own word for the visit. */
  readonly visit: string;
  readonly texts: Texts;
} & (
    | {
        readonly form: "visit booked";
        readonly tubes: readonly (readonly [tube: string, act: VisitAct])[];
        /** Days from the booking; left out where it is typed, elsewhere. */
        readonly inDays?: number;
      }
    | { readonly form: "visit moved"; readonly inDays: number }
    | { readonly form: "visit noted"; readonly state: NotedState }
    | { readonly form: "visit prepared" }
  );

/** A red flag, raised and handed over as its form says. */
export type Flagging = Typing &
  (
    | { readonly form: "red flag raised"; readonly texts: Texts }
    /** Of the newest that is open. */
    | { readonly form: "red flag done"; readonly texts: Texts }
  );

/** A call about the patient, as its page is typed. */
export type Calling = Typing & { readonly form: "call"; readonly texts: Texts };

export type Act = Recording | Correcting | Joining | Visiting | Flagging | Calling;

/** One invented patient: what the clinic typed about them, oldest first. */
export type Story = {
  readonly patient: Texts;
  readonly acts: readonly Act[];
  /** Its calls are part of what is told: whoever works the call list leaves it alone. */
  readonly ownCalls?: true;
};

/** An invented patient of the invented clinic. */
export const person = (familyName: string, givenName: string, rest: Texts): Texts => ({
  familyName,
  givenName,
  issuer: "Quillmere",
  ...rest,
});

const plainly = { at: "10:00", by: "nurse" } as const satisfies Partial<Act>;

type Said<A> = Omit<A, "daysAgo" | "at" | "by"> & Partial<Pick<Act, "at" | "by">>;

/** An act of the nurse at ten, unless said otherwise. */
export const act = (daysAgo: number, said: Said<Recording>): Recording => ({ ...plainly, daysAgo, ...said });

/** The same for what puts an earlier entry right. */
export const correct = (daysAgo: number, said: Said<Correcting>): Correcting => ({
  ...plainly,
  daysAgo,
  ...said,
});

/** Two records of one person put together. */
export const join = (daysAgo: number, said: Said<Omit<Joining, "form">>): Joining => ({
  ...plainly,
  form: "records joined",
  daysAgo,
  ...said,
});

type WithoutTyping<A> = A extends unknown ? Omit<A, "daysAgo" | "at" | "by"> : never;

/** The same for a visit. */
export const visit = (
  daysAgo: number,
  said: WithoutTyping<Visiting> & Partial<Pick<Act, "at" | "by">>,
): Visiting => ({ ...plainly, daysAgo, ...said });

/** The same for a red flag. */
export const flag = (daysAgo: number, said: Said<Omit<Flagging, "form">>): Flagging => ({
  ...plainly,
  form: "red flag raised",
  daysAgo,
  ...said,
});

/** What was done about the newest red flag that is open. */
export const flagDone = (daysAgo: number, said: Said<{ readonly texts: Texts } & Typing>): Flagging => ({
  ...plainly,
  form: "red flag done",
  daysAgo,
  ...said,
});

/** A tube placed or taken over, in five fields and what else was typed. */
export const tube = (daysAgo: number, word: string, texts: Texts): Act =>
  act(daysAgo, { form: "placed", tube: word, texts: { when: "today", ...texts } });

/** The same for a call, by the caller. */
export const callAt = (daysAgo: number, said: Said<Omit<Calling, "form">>): Calling => ({
  ...plainly,
  by: "caller",
  form: "call",
  daysAgo,
  ...said,
});

/** A call of the afternoon, or of the morning of the start day. */
export const call = (daysAgo: number, note: string, texts: Texts = {}): Act =>
  callAt(daysAgo, {
    at: daysAgo === 0 ? "09:10" : "14:20",
    texts: { outcome: "reached the patient", note, ...texts },
  });

/** A call that reached nobody. */
export const noAnswer = (daysAgo: number, note: string, texts: Texts = {}): Act =>
  callAt(daysAgo, { at: "11:40", texts: { outcome: "no answer", note, ...texts } });

/** That a tube wholly inside was told of, in English, by the nurse. */
export const told = (daysAgo: number, word: string): Act =>
  act(daysAgo, {
    at: "15:10",
    form: "told of the tube",
    tube: word,
    texts: { whom: "the patient", language: "English", by: "Tansy Nurseworth", when: "today" },
  });

/** A tube looked at under imaging, by the physician. */
export const check = (daysAgo: number, word: string, texts: Texts): Act =>
  act(daysAgo, {
    at: "11:20",
    by: "physician",
    form: "checked",
    tube: word,
    texts: { when: "today", ...texts },
  });

/** Emptied at that time, since the emptying before. */
export const emptied = (daysAgo: number, word: string, texts: Texts & { readonly at?: string }): Act => {
  const { at = "08:00", ...typed } = texts;
  return act(daysAgo, {
    at: later(at),
    by: "caller",
    form: "reading",
    tube: word,
    texts: { to: `today ${at}`, ...typed },
  });
};

/** Written down a quarter of an hour after it was measured, which was before 23:45. */
function later(at: string): string {
  const minutes = Number(at.slice(0, 2)) * 60 + Number(at.slice(3)) + 15;
  const two = (part: number): string => String(part).padStart(2, "0");
  return `${two(Math.floor(minutes / 60))}:${two(minutes % 60)}`;
}

/** Emptied each morning from that many days ago on, one volume in mL a day. */
export const emptiedDaily = (
  { from, word }: { readonly from: number; readonly word: string },
  drained: readonly number[],
  texts: Texts = {},
): readonly Act[] => drained.map((ml, days) => emptied(from - days, word, { ...texts, drained: String(ml) }));
