import { biliaryKinds } from "./biliary.ts";
import { bowelKinds } from "./bowel.ts";
import { chestKinds } from "./chest.ts";
import { collectionKinds } from "./collection.ts";
import type { KindDefinition } from "./define.ts";
import { feedingKinds } from "./feeding.ts";
import { otherKinds } from "./other.ts";
import { stentKinds } from "./stents.ts";
import { urinaryKinds } from "./urinary.ts";

const all = {
  ...urinaryKinds,
  ...stentKinds,
  ...collectionKinds,
  ...biliaryKinds,
  ...feedingKinds,
  ...bowelKinds,
  ...chestKinds,
  ...otherKinds,
} as const;

export type TubeKind = keyof typeof all;

export const tubeKinds = Object.keys(all) as TubeKind[];

export const kindOf = (kind: TubeKind): KindDefinition => all[kind];
