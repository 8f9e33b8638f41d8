import type { QuestionRow } from "#shared/protocol/call-rows.ts";
import type { Protocol } from "#shared/protocol/protocol.ts";
import { roles } from "#shared/tube/vocabulary.ts";
import { capital } from "#shared/words/capital.ts";
import { kindsOf } from "#shared/words/protocol/row-names.ts";
import { eachRow, ifAny, noRows, type RowWords, rowWords } from "#shared/words/protocol/row-words.ts";

/** 9 as "09:00". */
const clockHour = (hour: number): string => `${String(hour).padStart(2, "0")}:00`;

/** Who is called, when, and what when nobody is reached. */
export function callRowWords({ firstCall, escalation, calls }: Protocol): readonly RowWords[] {
  const rows = [
    rowWords("firstCall", firstCall, ({ from, to }) => `day ${from} to ${to} after the start`),
    rowWords("escalation", escalation, ({ daysPastTarget }) => `${daysPastTarget} days past the target`),
  ];
  if (calls === null) return [...rows, noRows("calls", "Other calls")];
  return [
    ...rows,
    rowWords(
      "calls.collectionEvery",
      calls.collectionEvery,
      ({ days }) => `${days.join(" or ")} days after the last call: not before the fewest, by the most`,
    ),
    rowWords(
      "calls.trialOn",
      calls.trialOn,
      ({ days, closed }) => `day ${days.join(", ")}, in hours; ${closed}`,
    ),
    rowWords(
      "calls.beforeExchange",
      calls.beforeExchange,
      ({ days, workingDays }) => `${days} days and ${workingDays} working days before`,
    ),
    rowWords("calls.afterRemoval", calls.afterRemoval, ({ from, to }) => `day ${from} to ${to}`),
    rowWords(
      "calls.diaryMissing",
      calls.diaryMissing,
      ({ days }) => `nothing entered for ${days} days of a tube whose output is measured`,
    ),
    rowWords(
      "calls.notReached",
      calls.notReached,
      ({ attempts, withinWorkingDays, twiceSameDayHours }) =>
        `${attempts} attempts within ${withinWorkingDays} working days, twice on the same day in a trial and in the first ${twiceSameDayHours} h`,
    ),
    ...eachRow(
      "calls.rungs",
      calls.rungs,
      ({ afterWorkingDays, says }) =>
        `${afterWorkingDays} working ${afterWorkingDays === 1 ? "day" : "days"} after what came before: ${says}`,
    ),
    ...eachRow(
      "calls.hours",
      calls.hours,
      ({ from, to }) => `from ${clockHour(from)} to ${clockHour(to)} by the clinic's clock`,
    ),
    rowWords(
      "calls.whereaboutsEvery",
      calls.whereaboutsEvery,
      ({ days, ward }) => `asked again every ${days} days; ${ward}`,
    ),
  ];
}

/** "any role but internal" where that is the shorter; a list in another order than the roles' own is told as it stands. */
function rolesWords(named: readonly string[]): string {
  const others = roles.filter((role) => !named.includes(role));
  const inOrder = roles.filter((role) => named.includes(role));
  const isMost = others.length > 0 && others.length < named.length && inOrder.join() === named.join();
  return isMost ? `any role but ${others.join(", ")}` : `role ${named.join(", ")}`;
}

/** "of each tube that is open: role collection, venting": whom and what a question speaks of. */
function askedOf({ of, only, roles: named, kinds, heldBy }: QuestionRow): string {
  const which = [
    named.length === 0 ? "" : rolesWords(named),
    kinds.length === 0 ? "" : kindsOf({ kinds }),
    heldBy.length === 0 ? "" : `held by ${heldBy.join(", ")}`,
  ].filter(Boolean);
  const state = ifAny(only, (is) => (of === "the patient" ? ` where a tube is ${is}` : ` that is ${is}`));
  return `of ${of}${state}${which.length === 0 ? "" : `: ${which.join("; ")}`}`;
}

/** 'no: red flag "dry"; record "output"': what an answer leads on to. */
function opens({ opensOn, redFlag, instead, thenRecord }: QuestionRow): string {
  const opened = [
    ifAny(redFlag, (flag) => `red flag "${flag}"`),
    ...instead.map(
      (other) => `red flag "${other.redFlag}" ${redFlag === null ? "only" : "instead"} if ${other.of}`,
    ),
    ifAny(thenRecord, (what) => `record "${what}"`),
  ].filter(Boolean);
  return `${opensOn ?? "no answer opens anything"}${opened.length === 0 ? "" : `: ${opened.join("; ")}`}`;
}

/** What is asked in a call, of whom and of which tubes, and what an answer opens. */
export const questionRowWords = ({ calls }: Protocol): readonly RowWords[] =>
  eachRow(
    "calls.questions",
    calls?.questions ?? [],
    (row) => `${row.asks} Asked ${askedOf(row)}. ${capital(opens(row))}`,
  );
