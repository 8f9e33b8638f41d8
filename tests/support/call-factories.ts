import { day } from "#shared/day/day.ts";
import type { Payload } from "#shared/tube/payloads.ts";
import { apart, type Entry, type Said, tell } from "#tests/support/factories.ts";

const monday = { on: "2026-08-17", at: "10:00" };

type Back = { readonly back?: string; readonly backAt?: string };

/** The patient was rung and did not answer, on Monday 17 August 2026 at 10:00. */
export const rang = (said: Said & Back & Partial<Omit<Payload<"call attempted">, "back">> = {}): Entry => {
  const { of, rest } = apart(said);
  const { back, backAt, ...told } = rest;
  const plain = { to: "the patient", outcome: "no answer" } as const;
  const nothing = { number: null, interpreter: null, answers: [], note: null };
  const asked = back === undefined ? null : { on: day(back), at: backAt ?? null };
  return tell("call attempted", { ...plain, ...nothing, ...told, back: asked }, { ...monday, ...of });
};

export const letterSent = (said: Said & Partial<Payload<"letter sent">> = {}): Entry => {
  const { of, rest } = apart(said);
  return tell("letter sent", { to: "the patient", note: null, ...rest }, { ...monday, ...of });
};

export const notReachedDecided = ({
  again = "2026-09-14",
  ...said
}: Said & { readonly again?: string | null; readonly reason?: string } = {}): Entry => {
  const { of, rest } = apart(said);
  const plain = { decidedBy: "Dr Example", reason: "asked the referrer" };
  const on = again === null ? null : day(again);
  return tell("not reached decided", { ...plain, ...rest, again: on }, { ...monday, ...of });
};

export const flagRaised = (said: Said & Partial<Payload<"red flag raised">> = {}): Entry => {
  const { of, rest } = apart(said);
  const plain = { row: "fever", level: "same day", says: "38.0 C and over", untilReached: null } as const;
  const nobody = { of: null, toldBy: null, note: null };
  return tell("red flag raised", { ...plain, ...nobody, ...rest }, { id: "flag-1", ...monday, ...of });
};

export const flagHanded = (said: Said & Partial<Payload<"red flag handed">> = {}): Entry => {
  const { of, rest } = apart(said);
  const plain = { flag: "flag-1", to: "Dr Example", note: null };
  return tell("red flag handed", { ...plain, ...rest }, { ...monday, ...of });
};

export const flagDone = (said: Said & Partial<Payload<"red flag done">> = {}): Entry => {
  const { of, rest } = apart(said);
  const plain = { flag: "flag-1", by: "Dr Example", what: "seen, antibiotic begun" };
  return tell("red flag done", { ...plain, ...rest }, { ...monday, ...of });
};

export const toldOfTube = (said: Said & Partial<Payload<"told of the tube">> = {}): Entry => {
  const { of, rest } = apart(said);
  const plain = { whom: "the patient", language: "English", by: "the nurse" } as const;
  return tell("told of the tube", { ...plain, ...rest }, { ...monday, ...of });
};
