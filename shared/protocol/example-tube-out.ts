import type { TubeOutRow } from "#shared/protocol/tube-out-rows.ts";
import type { OutGroup } from "#shared/tube/kind/define.ts";
import { kindOf, tubeKinds } from "#shared/tube/kind/kinds.ts";

type Says = Pick<TubeOutRow, "id" | "immature" | "mature" | "untilReached" | "source">;

const ofGroup = (group: OutGroup, says: Says): TubeOutRow => ({
  ...says,
  kinds: tubeKinds.filter((kind) => kindOf(kind).ifOut === group),
  out: "out",
});

/** What is shown when a tube is out, by the example table. */
export const exampleTubeOut: TubeOutRow[] = [
  ofGroup("kidney", {
    id: "nephrostomy",
    immature: "ring now, likely a new access",
    mature: "same day; the tract stays open about 8-24 h",
    untilReached: "keep the old tube, cover the site, nothing pushed in",
    source: "8; rest CP",
  }),
  ofGroup("bile", {
    id: "external or internal-external biliary, cholecystostomy",
    immature: "ring now: bile may leak inside",
    mature: "same day",
    untilReached: "cover the site, keep the tube",
    source: "CP",
  }),
  ofGroup("stomach or bowel", {
    id: "gastrostomy, gastrojejunostomy, jejunostomy",
    immature: "no feed, nothing put back blindly, ring now",
    mature: "within hours; position confirmed before any feed",
    untilReached: "stop the feed, keep the tube",
    source: "CP",
  }),
  ofGroup("bladder", {
    id: "suprapubic",
    immature: "ring now, to hospital",
    mature: "minutes to hours",
    untilReached: "cover the site",
    source: "CP",
  }),
  ofGroup("chest", {
    id: "chest tube",
    immature: "emergency",
    mature: "emergency",
    untilReached: "cover the site; breathless: emergency services",
    source: "CP",
  }),
  ofGroup("collection", {
    id: "collection drain",
    immature: "same day",
    mature: "next working day if well",
    untilReached: "cover, measure what leaks",
    source: "CP",
  }),
  {
    id: "any, part out",
    kinds: [],
    out: "part out",
    immature: "do not use, do not push back",
    mature: "do not use, do not push back",
    untilReached: "secure as it is, ring",
    source: "CP",
  },
];
