import { isDay } from "#shared/day/day.ts";
import { printDay } from "#shared/day/print-day.ts";
import { type ShutSign, shutSigns } from "#shared/output/alarm/found-while-shut.ts";
import { onlyWays } from "#shared/output/alarm/only-way-out.ts";
import type { AlarmCode } from "#shared/output/alarm/reason.ts";
import type { Why } from "#shared/step/step.ts";
import { andList } from "#shared/words/and-list.ts";

type Args = Why["args"];
type Value = Args[string] | undefined;

const MINUTES = 60;

/** `7 h 10 min`. */
export function printHours(minutes: Value): string {
  const all = Number(minutes);
  const [hours, rest] = [Math.floor(all / MINUTES), all % MINUTES];
  return [hours > 0 && `${hours} h`, (rest > 0 || hours === 0) && `${rest} min`].filter(Boolean).join(" ");
}

/** To a tenth, but never onto its row: 99.96 under 100 stays under it. */
function figure(value: Value, row: Value): string {
  const exact = Number(value);
  const rounded = Math.round(exact * 10) / 10;
  return String(rounded === Number(row) ? exact : rounded);
}

const day = (value: Value): string => (typeof value === "string" && isDay(value) ? printDay(value) : "a day");

const namesOfSigns: Readonly<Record<ShutSign, (args: Args) => string>> = {
  fever: ({ celsius }) => `temperature ${celsius} °C`,
  chills: () => "shaking chills",
  "very unwell": () => "feels very unwell",
  pain: ({ pain }) => `pain ${pain} of 10`,
  jaundice: () => "jaundice",
};

const signWords = (args: Args): string =>
  andList(
    String(args.signs)
      .split(", ")
      .flatMap((named) => shutSigns.filter((sign) => sign === named))
      .map((sign) => namesOfSigns[sign](args)),
  );

const said: Readonly<Record<AlarmCode, (args: Args) => string>> = {
  dry: ({ minutes, hours }) => `Nothing drained for ${printHours(minutes)} (row: ${hours} h`,
  low: ({ day: on, mlPer24h, under }) =>
    `Low on ${day(on)}: ${figure(mlPer24h, under)} mL/24 h (row: under ${under}`,
  high: ({ day: on, mlPer24h, over }) =>
    `High on ${day(on)}: ${figure(mlPer24h, over)} mL/24 h (row: over ${over}`,
  "sudden-drop": ({ day: on, mlPer24h, median, days, overPercent, andMl }) =>
    `Sudden drop on ${day(on)}: ${figure(mlPer24h, null)} mL/24 h, the median of the ${days} complete days before being ${figure(median, null)} (row: over ${overPercent} % and ${andMl} mL less`,
  "new-fluid": ({ character, expected }) => `New fluid: ${character} (expected: ${expected}`,
  "session-over-ceiling": ({ ml, over }) => `A session of ${figure(ml, over)} mL (row: at most ${over}`,
  "session-symptoms": ({ symptoms }) => `Felt during a session: ${symptoms} (row: stop`,
  "session-falling": ({ ml, before }) =>
    `Breathless, and the session brought ${figure(ml, before)} mL after ${figure(before, ml)} (row: less with breathlessness`,
  breathless: () => "Breathless when it was drained (row: with any tube",
  "air-leak": () => "An air leak where there was none (row: no air leak",
  "leak-while-shut": ({ leak }) => `Shut, and the dressing is ${leak} (row: a capped trial with a leak`,
  "symptoms-while-shut": ({ symptoms }) => `Shut, and felt: ${symptoms} (row: a capped trial with symptoms`,
  "found-while-shut": (args) => `Found on ${day(args.day)} while shut: ${signWords(args)} (row: ${args.row}`,
  "soaking-leak": () => "A leak that soaks the dressing (row: soaking leak",
};

const wayWords: Readonly<Record<(typeof onlyWays)[number], string>> = {
  "transplant kidney": "a transplant kidney",
  "single kidney": "a single kidney",
  "nothing voided": "no urine by any way that is known, nothing voided",
  "nothing voided, other tubes dry":
    "no urine by any way, nothing voided and the other urinary tubes dry too",
  "other tubes dry":
    "no urine by any way that is known, the other urinary tubes dry too; what is voided is not known",
};

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** Why the only way out is told faster, and what nobody knows of other ways. */
function besideLevel({ onlyWayOut, otherWays }: Args): { readonly reason: string; readonly asks: string } {
  const way = onlyWays.find((one) => one === onlyWayOut);
  return {
    reason: way === undefined ? "" : `: ${wayWords[way]}`,
    asks: otherWays === "not known" ? "Whether urine comes by another way is not known: ask." : "",
  };
}

/** "Nothing drained for 7 h 10 min (row: 6 h; source CP). Same day. Until reached: do not force the flush." */
export function alarmWhy(code: AlarmCode, args: Args): string {
  const { source, level, untilReached } = args;
  const { reason, asks } = besideLevel(args);
  const parts = [
    `${said[code](args)}; source ${source}).`,
    typeof level === "string" ? `${capital(level)}${reason}.` : "",
    asks,
    typeof untilReached === "string" ? `Until reached: ${untilReached}.` : "",
  ];
  return parts.filter((part) => part !== "").join(" ");
}
