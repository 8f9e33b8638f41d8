import { dayAt, startOfDay } from "#shared/day/instant.ts";
import type { AlarmInput, AlarmReason } from "#shared/output/alarm/reason.ts";
import { instantOf } from "#shared/output/segment-cuts.ts";
import type { RedFlagRow } from "#shared/protocol/red-flag-rows.ts";
import { type Fact, known } from "#shared/tube/certainty.ts";
import type { FoundWhileShut, ShutSpell } from "#shared/tube/state.ts";
import type { Role } from "#shared/tube/vocabulary.ts";

/** What speaks against going on without the tube, by the clinic's row of a capped trial; fever as its row of red flags has it. */
export const shutSigns = ["fever", "chills", "very unwell", "pain", "jaundice"] as const;
export type ShutSign = (typeof shutSigns)[number];

/** Roles of tubes that are shut to see whether it goes without them; others are shut between uses. */
const shutOnTrial: readonly Role[] = ["collection", "drains an organ", "air and fluid", "venting"];

type Says = "yes" | "no" | "nothing said";

function says<T>(fact: Fact<T> | undefined, is: (value: T) => boolean): Says {
  const value = fact && known(fact);
  if (value === undefined) return "nothing said";
  return is(value) ? "yes" : "no";
}

/** What one entry says of each sign. Without a row for fever a temperature says nothing. */
function signsIn({ findings }: FoundWhileShut, feverFromC: number | null): Record<ShutSign, Says> {
  const { temperature, chills, feels, pain, jaundice } = findings;
  return {
    fever: feverFromC === null ? "nothing said" : says(temperature, ({ value }) => value >= feverFromC),
    chills: says(chills, (yes) => yes),
    "very unwell": says(feels, (feeling) => feeling === "very unwell"),
    pain: says(pain, ({ value }) => value > 0),
    jaundice: says(jaundice, (yes) => yes),
  };
}

type Came = { readonly found: FoundWhileShut; readonly signs: readonly ShutSign[] };

/** The entries with which a sign came up that was not there before, of one time in which the tube was shut. */
function cameUpIn({ found: entries }: ShutSpell, feverFromC: number | null): readonly Came[] {
  const running = new Set<ShutSign>();
  return entries.flatMap((found) => {
    const said = signsIn(found, feverFromC);
    const signs = shutSigns.filter((sign) => said[sign] === "yes" && !running.has(sign));
    for (const sign of shutSigns) {
      if (said[sign] === "yes") running.add(sign);
      if (said[sign] === "no") running.delete(sign);
    }
    return signs.length === 0 ? [] : [{ found, signs }];
  });
}

function reasonOf({ zone }: AlarmInput, { found, signs }: Came, flag: RedFlagRow): AlarmReason {
  const { eventId, recordedOn, findings } = found;
  const at = instantOf(found, zone) ?? startOfDay(recordedOn, zone);
  const figure = (sign: ShutSign, name: "temperature" | "pain"): number | null => {
    const fact = findings[name];
    return signs.includes(sign) && fact !== undefined ? (known(fact)?.value ?? null) : null;
  };
  return {
    key: `found-while-shut:${signs.join("+").replace(" ", "-")}:${eventId}`,
    code: "found-while-shut",
    level: flag.level,
    untilReached: flag.untilReached,
    on: dayAt(at, zone),
    at,
    readings: [],
    eventId,
    args: {
      day: dayAt(at, zone),
      signs: signs.join(", "),
      celsius: figure("fever", "temperature"),
      pain: figure("pain", "pain"),
      row: flag.says,
    },
    source: flag.source,
  };
}

/**
 * Fever, chills, pain, jaundice or feeling very unwell, found of the patient while the tube was shut. Each speaks when it comes up, and again once
 * it was gone; opening the tube is what holds until somebody is reached, and answers none.
 */
export function foundWhileShutReasons(input: AlarmInput): AlarmReason[] {
  const { tube, protocol } = input;
  const flag = protocol.redFlags.find(({ id }) => id === "trial with symptoms");
  if (flag === undefined || !shutOnTrial.includes(tube.role)) return [];
  const feverFromC = protocol.outputRows?.fever?.fromC ?? null;
  return tube.shutSpells
    .flatMap((spell) => cameUpIn(spell, feverFromC))
    .map((came) => reasonOf(input, came, flag));
}
