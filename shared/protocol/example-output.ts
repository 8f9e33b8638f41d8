import type { OutputRows } from "#shared/protocol/output-rows.ts";
import type { OutputGroup } from "#shared/tube/kind/define.ts";
import { kindOf, type TubeKind, tubeKinds } from "#shared/tube/kind/kinds.ts";

/** The kinds that are measured alike. */
const measuredAs = (...groups: readonly OutputGroup[]): TubeKind[] =>
  tubeKinds.filter((kind) => groups.some((group) => group === kindOf(kind).output));

const urine = measuredAs("urine");
const bile = measuredAs("bile");

/** Rows of output of the example table: adults, to be replaced by the clinic's own. */
export const exampleOutputRows: OutputRows = {
  lowNetInstead: [{ kinds: measuredAs("lymphocele"), lowNetMl: 20, lowDays: 2, source: "CP" }],
  lastCompleteDayHours: { hours: 72, source: "CP" },
  clinicalStateHours: { hours: 72, source: "CP" },
  fever: { fromC: 38, source: "CP" },
  plateau: { overMlPer24h: 50, days: 5, ofLast: 7, source: "CP" },
  flushNotRecorded: { says: "that reading: cannot tell", source: "CP" },
  dry: [
    { kinds: urine, hours: 6, level: "same day", onlyWayOut: "on call now", source: "CP" },
    { kinds: bile, hours: 12, level: "same day", onlyWayOut: null, source: "CP" },
  ],
  low: [
    { kinds: urine, underMlPer24h: 100, asks: null, source: "CP" },
    { kinds: bile, underMlPer24h: 100, asks: null, source: "6; rest CP" },
    {
      kinds: measuredAs("gallbladder"),
      underMlPer24h: null,
      asks: "flush, pain, fever; tube check next working day, same day with symptoms; never removal by volume",
      source: "CP",
    },
  ],
  high: [
    { kinds: urine, overMlPer24h: 3000, fromDay: 4, source: "CP" },
    { kinds: bile, overMlPer24h: 1500, fromDay: null, source: "6; rest CP" },
  ],
  suddenDrop: { overPercent: 70, underMedianOfDays: 3, andMl: 300, notInFirstHours: 72, source: "CP" },
  chestTube: {
    kinds: measuredAs("chest"),
    noAirLeakHours: 24,
    underMlPer24h: 100,
    and: "lung up on film",
    source: "MEM",
  },
  sessions: [
    {
      kinds: measuredAs("pleural"),
      lowMl: 50,
      lowSessions: 3,
      and: "no symptoms",
      ceilingMl: 1000,
      stopsOn: "cough or pain: stop; falling volume with breathlessness: alarm",
      source: "MEM",
    },
    {
      kinds: measuredAs("peritoneal"),
      lowMl: null,
      lowSessions: null,
      and: null,
      ceilingMl: 2000,
      stopsOn: "cough or pain: stop; falling volume with breathlessness: alarm",
      source: "MEM",
    },
  ],
  newFluid: { level: "same day", pinkUrineHours: 48, source: "CP" },
  plausibility: { overMlPer24h: 5000, overTimesMedian: 10, andMoreMl: 100, source: "CP" },
};
