import { type KindDefinition, row } from "./define.ts";

/** Kinds that empty a collection. Figures are examples for adults; see urinary.ts for how sources are marked. */
export const collectionKinds = {
  "abscess drain": {
    name: "abscess drain",
    shortForms: ["abscess", "drain", "fluid drain", "collection drain", "perc drain"],
    role: "collection",
    mode: "to bag",
    organ: null,
    sided: false,
    usualFrench: [8, 12],
    retention: "locking loop",
    outside: true,
    expectedFluid: ["purulent", "serous", "serosanguineous", "debris"],
    flushOrder: "5-10 mL x 1-3 a day",
    rows: [
      row({
        id: "abscess or fluid drain",
        asks: "review",
        target: 14,
        latest: 90,
        immatureUnder: 14,
        source: "1 2 3; rest CP",
      }),
    ],
  },
} as const satisfies Record<string, KindDefinition>;
