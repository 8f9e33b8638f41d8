import type { StaffRole } from "#shared/access/roles.ts";
import type { FormKind } from "#shared/record/event-forms.ts";
import type { Texts } from "#shared/record/field-spec.ts";

/** One thing that somebody typed: days before the demo's start day, the clock time, the form and its texts. */
export type Act = {
  readonly daysAgo: number;
  readonly at: string;
  readonly by: StaffRole;
  readonly form: FormKind | "reading";
  /** The story's own word for the tube: given by the form that opens it, named by all later ones. */
  readonly tube?: string;
  /** For a conversion: the word of the tube that it opens. */
  readonly opens?: string;
  readonly texts: Texts;
};

/** One invented patient: what the clinic typed about them, oldest first. */
export type Story = {
  readonly patient: Texts;
  readonly acts: readonly Act[];
};

/** An invented patient of the invented clinic. */
export const person = (familyName: string, givenName: string, rest: Texts): Texts => ({
  familyName,
  givenName,
  issuer: "Quillmere",
  ...rest,
});

const plainly = { at: "10:00", by: "nurse" } as const satisfies Partial<Act>;

/** An act of the nurse at ten, unless said otherwise. */
export const act = (
  daysAgo: number,
  said: Omit<Act, "daysAgo" | "at" | "by"> & Partial<Pick<Act, "at" | "by">>,
): Act => ({
  ...plainly,
  daysAgo,
  ...said,
});

/** A tube placed or taken over, in five fields and what else was typed. */
export const tube = (daysAgo: number, word: string, texts: Texts): Act =>
  act(daysAgo, { form: "placed", tube: word, texts: { when: "today", ...texts } });

export const call = (daysAgo: number, word: string, note: string): Act =>
  act(daysAgo, {
    at: "14:20",
    by: "caller",
    form: "called",
    tube: word,
    texts: { outcome: "reached the patient", note, when: "today" },
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

/** Written down a quarter of an hour after it was measured. */
function later(at: string): string {
  const minutes = Number(at.slice(0, 2)) * 60 + Number(at.slice(3)) + 15;
  const two = (part: number): string => String(part).padStart(2, "0");
  return `${two(Math.floor(minutes / 60) % 24)}:${two(minutes % 60)}`;
}
