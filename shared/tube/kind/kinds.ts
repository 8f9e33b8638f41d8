import { collectionKinds } from "./collection.ts";
import type { KindDefinition } from "./define.ts";
import { urinaryKinds } from "./urinary.ts";

const all = { ...urinaryKinds, ...collectionKinds } as const;

export type TubeKind = keyof typeof all;

export const tubeKinds = Object.keys(all) as TubeKind[];

export const kindOf = (kind: TubeKind): KindDefinition => all[kind];
