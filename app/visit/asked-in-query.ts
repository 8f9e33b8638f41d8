import { readNotOn } from "#shared/record/field/not-on-field.ts";
import type { Texts } from "#shared/record/field-spec.ts";
import type { ActOnTube, NotOn } from "#shared/visit/visit.ts";
import { type VisitAct, visitActs } from "#shared/visit/visit-acts.ts";

export type Query = Readonly<Record<string, string | string[] | undefined>>;

/** The name of a tube's choice in the form that asks for slots. */
export const ACT = "act-";

const one = (value: string | string[] | undefined): string | undefined =>
  typeof value === "string" && value.trim() !== "" ? value.trim() : undefined;

const isAct = (word: string | undefined): word is VisitAct => visitActs.some((act) => act === word);

/** "tube-1:exchange,tube-2:check". */
function listed(text: string | undefined): readonly ActOnTube[] | undefined {
  const tubes = text?.split(",").flatMap((part) => {
    const [tubeId = "", act] = part.split(":");
    return isAct(act) ? [{ tubeId, act }] : [];
  });
  return tubes === undefined || tubes.length === 0 ? undefined : tubes;
}

/** Chosen in the form, tube by tube; undefined where no form was sent. */
function chosen(query: Query): readonly ActOnTube[] | undefined {
  const names = Object.keys(query).filter((name) => name.startsWith(ACT));
  if (names.length === 0) return undefined;
  return names.flatMap((name) => {
    const act = one(query[name]);
    return isAct(act) ? [{ tubeId: name.slice(ACT.length), act }] : [];
  });
}

/** What slots are asked for by the address, and what of it cannot be read. */
export type AskedSlots = {
  readonly tubes: readonly ActOnTube[] | undefined;
  readonly first: string | undefined;
  readonly notOn: NotOn | undefined;
  readonly minutes: number | undefined;
  readonly urgent: boolean | undefined;
  readonly texts: { readonly notOn: string | undefined; readonly minutes: string | undefined };
  readonly unread: readonly ("notOn" | "minutes")[];
};

export function askedInQuery(query: Query): AskedSlots {
  const texts = { notOn: one(query.cannot), minutes: one(query.minutes) };
  const sent = chosen(query);
  const days = texts.notOn === undefined ? undefined : readNotOn(texts.notOn);
  const minutes = Number(texts.minutes ?? Number.NaN);
  const isMinutes = Number.isInteger(minutes) && minutes >= 1 && minutes <= 1440;
  return {
    tubes: sent ?? listed(one(query.tubes)),
    first: one(query.first),
    // A form that was sent with nothing in it says that there is nothing.
    notOn: days === undefined ? (sent === undefined ? undefined : []) : days.ok ? days.value : undefined,
    minutes: isMinutes ? minutes : undefined,
    urgent: one(query.urgent) === "yes" ? true : sent === undefined ? undefined : false,
    texts,
    unread: [
      ...(days !== undefined && !days.ok ? (["notOn"] as const) : []),
      ...(texts.minutes !== undefined && !isMinutes ? (["minutes"] as const) : []),
    ],
  };
}

/** A slot that a day's or a week's page filled in. */
export const slotInQuery = ({ on, at, room }: Query): Texts =>
  Object.fromEntries(
    Object.entries({ on: one(on), at: one(at), room: one(room) }).filter(
      (entry): entry is [string, string] => entry[1] !== undefined,
    ),
  );
