import type { Texts } from "#shared/record/field-spec.ts";
import type { TubeKind } from "#shared/tube/kind/kinds.ts";

/** How a kind of tube is typed in this clinic, and how its days go by. */
export type Cast = {
  readonly kind: TubeKind;
  readonly sizes: readonly string[];
  readonly sided: boolean;
  /** What is typed beside kind, side, size and date. */
  readonly texts: Texts;
  /** What the balloon is filled to, in mL, where there is one. */
  readonly balloonMl?: number;
  /** What one emptying of a day brings, least and most, in mL, and what it looks like. */
  readonly output?: { readonly ml: readonly [number, number]; readonly characters: string };
};

const loop = { retention: "locking loop", takes: ".035 in" } as const;
const urine = { ml: [900, 1700], characters: "urine-like" } as const;
const bile = { ml: [260, 640], characters: "bilious" } as const;

export const casts = {
  nephrostomy: {
    kind: "nephrostomy",
    sizes: ["8 f", "8 f", "10 f"],
    sided: true,
    texts: loop,
    output: urine,
  },
  nephroureteral: {
    kind: "nephroureteral catheter",
    sizes: ["8.5 f"],
    sided: true,
    texts: { retention: "two loops", takes: ".038 in" },
  },
  conduit: { kind: "conduit catheter", sizes: ["8 f"], sided: true, texts: { retention: "loop" } },
  suprapubic: {
    kind: "suprapubic catheter",
    sizes: ["16 f", "18 f"],
    sided: false,
    texts: { retention: "balloon" },
    balloonMl: 10,
    output: urine,
  },
  external: {
    kind: "external biliary drain",
    sizes: ["8 f", "8.5 f"],
    sided: true,
    texts: loop,
    output: bile,
  },
  internalExternal: {
    kind: "internal-external biliary drain",
    sizes: ["8.5 f", "10 f"],
    sided: true,
    texts: { retention: "locking loop", takes: ".038 in" },
    output: bile,
  },
  gallbladder: {
    kind: "cholecystostomy",
    sizes: ["8 f"],
    sided: false,
    texts: { ...loop, route: "transhepatic" },
    output: { ml: [90, 260], characters: "bilious" },
  },
  balloonGastrostomy: {
    kind: "balloon gastrostomy",
    sizes: ["16 f", "18 f", "20 f"],
    sided: false,
    texts: { retention: "balloon" },
    balloonMl: 10,
  },
  loopGastrostomy: { kind: "loop gastrostomy", sizes: ["12 f", "14 f"], sided: false, texts: loop },
  bumperGastrostomy: {
    kind: "bumper gastrostomy",
    sizes: ["18 f", "20 f"],
    sided: false,
    texts: { retention: "bumper" },
  },
  jejunostomy: { kind: "jejunostomy", sizes: ["10 f", "12 f"], sided: false, texts: { retention: "loop" } },
  venting: {
    kind: "venting gastrostomy",
    sizes: ["16 f", "18 f"],
    sided: false,
    texts: { retention: "locking loop" },
  },
  abscess: {
    kind: "abscess drain",
    sizes: ["8 f", "10 f", "12 f"],
    sided: false,
    texts: { ...loop, flushOrder: "10 mL x 2 a day" },
    output: { ml: [45, 130], characters: "purulent" },
  },
  pancreatic: {
    kind: "pancreatic drain",
    sizes: ["14 f", "16 f"],
    sided: false,
    texts: { ...loop, cavity: "lesser sac", flushOrder: "20 mL x 3 a day" },
    output: { ml: [160, 320], characters: "purulent, debris" },
  },
  lymphocele: {
    kind: "lymphocele drain",
    sizes: ["8 f", "10 f"],
    sided: false,
    texts: { ...loop, flushOrder: "none" },
    output: { ml: [70, 190], characters: "serous" },
  },
  pleural: {
    kind: "tunnelled pleural catheter",
    sizes: ["15.5 f"],
    sided: true,
    texts: { retention: "cuff" },
    output: { ml: [250, 800], characters: "serous" },
  },
  peritoneal: {
    kind: "tunnelled peritoneal drain",
    sizes: ["15 f"],
    sided: false,
    texts: { retention: "cuff" },
    output: { ml: [900, 1900], characters: "serous" },
  },
  stent: { kind: "ureteral stent", sizes: ["6 f", "7 f"], sided: true, texts: { retention: "two loops" } },
  biliaryStent: {
    kind: "plastic biliary stent",
    sizes: ["8.5 f", "10 f"],
    sided: false,
    texts: { retention: "flaps" },
  },
} as const satisfies Record<string, Cast>;

export type CastName = keyof typeof casts;
