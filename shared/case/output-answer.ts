import type { Json } from "#shared/case/json.ts";
import type { Looking } from "#shared/case/looking.ts";
import type { Zone } from "#shared/day/instant.ts";
import type { DayNet, NetDay } from "#shared/output/net-day.ts";
import { flushIsOrdered, outputOfTube } from "#shared/output/output-of-tube.ts";
import { HOUR_MS } from "#shared/output/rate.ts";
import { kindOf } from "#shared/tube/kind/kinds.ts";
import type { TubeState } from "#shared/tube/state.ts";
import { printRate, printVolume } from "#shared/words/output.ts";

function netAnswer(net: DayNet): { readonly net: string; readonly rate?: string } {
  switch (net.kind) {
    case "known":
      return { net: printVolume(net.ul), rate: printRate(net.mlPer24h) };
    case "cannot tell":
    case "missing":
      return { net: net.kind };
  }
}

const dayAnswer = ({ net, segment, coveredMs, complete, because, remarks }: NetDay): Json => ({
  ...netAnswer(net),
  segment,
  coveredHours: Math.round((coveredMs / HOUR_MS) * 100) / 100,
  complete,
  because,
  remarks,
});

/** Days by their date; the part of a day after a change of size or mode is "2026-11-07 part 2". */
function daysAnswer(days: readonly NetDay[]): Json {
  const named = days.map((part, index) => {
    const before = days.slice(0, index).filter(({ day }) => day === part.day).length;
    return [before === 0 ? part.day : `${part.day} part ${before + 1}`, dayAnswer(part)] as const;
  });
  return Object.fromEntries(named);
}

/** A tube's net output by clinic days, as its output page shows it. */
export function outputAnswer({ readings, now, protocol }: Looking, tube: TubeState, zone: Zone): Json {
  const own = readings.filter(({ tubeId }) => tubeId === tube.id);
  const { days, problems, aspirates } = outputOfTube(tube, {
    readings: own,
    zone,
    row: protocol.output,
    now,
  });
  return {
    hasOutput: kindOf(tube.kind).outside,
    flushOrdered: flushIsOrdered(tube),
    days: daysAnswer(days),
    problems: problems.map(({ code }) => code),
    aspirates: aspirates.length,
  };
}
