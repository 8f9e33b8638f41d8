import type { Texts } from "#shared/record/field-spec.ts";

/** What the invented clinic has ready, as somebody typed it: types without makers, plainly invented. Sizes are of the usual order. */

const wire = (name: string, outside: string, length: string): Texts => ({
  sort: "wire",
  name: `${name} ${outside}, ${length} cm`,
  outside: `${outside} in`,
  length,
});

const wires = [
  wire("Thin", "0.018", "80"),
  wire("Thin", "0.018", "180"),
  wire("Soft", "0.025", "145"),
  wire("Soft", "0.025", "260"),
  wire("Standard", "0.035", "80"),
  wire("Standard", "0.035", "145"),
  wire("Standard", "0.035", "260"),
  wire("Stiff", "0.035", "145"),
  wire("Stiff", "0.035", "180"),
  wire("Stiff", "0.038", "145"),
  wire("Stiff", "0.038", "260"),
];

const needles: readonly Texts[] = [
  { sort: "needle", name: "Entry needle 18 G", outside: "18 g", takes: ".038 in", length: "15" },
  // Nobody here has read its package: a gauge alone says nothing of the inside.
  { sort: "needle", name: "Entry needle 19 G", outside: "19 g", length: "15" },
  { sort: "needle", name: "Entry needle 20 G", outside: "20 g", takes: ".018 in", length: "15" },
  { sort: "needle", name: "Entry needle 21 G", outside: "21 g", takes: ".018 in", length: "15" },
];

const dilators = [7, 8, 9, 10, 12, 14, 16, 18].map(
  (size): Texts => ({
    sort: "dilator",
    name: `Dilator ${size}`,
    outside: `${size} f`,
    takes: ".038 in",
    endHole: "open",
    length: "20",
  }),
);

const drain = {
  sort: "tube",
  kinds: "abscess drain",
  endHole: "open",
  retention: "locking loop",
};
const kidney = { ...drain, kinds: "nephrostomy" };

const tubes: readonly Texts[] = [
  { ...drain, name: "Drain 6", outside: "6 f", takes: ".035 in", length: "25" },
  {
    ...drain,
    name: "Drain 8",
    outside: "8 f",
    takes: ".038 in",
    length: "25",
    bores: "hub 2.2 mm, shaft 1.9 mm",
  },
  { ...drain, name: "Drain 10", outside: "10.2 f", takes: ".038 in", length: "25" },
  {
    ...drain,
    name: "Drain 12",
    outside: "12 f",
    takes: ".038 in",
    length: "30",
    bores: "hub 2.8 mm, shaft 2.6 mm, end hole .041 in",
  },
  // Tapered to the tip: what passes the shaft stops at the end hole.
  {
    ...drain,
    name: "Drain 12, tapered",
    outside: "12 f",
    length: "30",
    bores: "hub 2.8 mm, shaft 2.6 mm, end hole .036 in",
  },
  { ...drain, name: "Drain 14", outside: "14 f", length: "30" },
  { ...drain, name: "Drain 16", outside: "16 f", length: "~30", retention: "?" },
  { ...kidney, name: "Nephrostomy 8", outside: "8 f", takes: ".038 in", length: "25" },
  {
    ...kidney,
    name: "Nephrostomy 10, tapered",
    outside: "10 f",
    length: "25",
    bores: "shaft 2.3 mm, end hole .039 in +- .001 in",
  },
  {
    ...kidney,
    name: "Nephrostomy 12",
    outside: "12 f",
    takes: ".038 in",
    length: "25",
    certainty: "reported",
  },
];

const sheaths = [
  ["7", "9", "2.4"],
  ["9", "11", "3.1"],
  ["12", "15", "4.1"],
].map(
  ([takes, outside, inside]): Texts => ({
    sort: "sheath",
    name: `Sheath ${takes}`,
    outside: `~${outside} f`,
    takesDevice: `${takes} f`,
    bores: `shaft ${inside} mm`,
    endHole: "open",
    length: "25",
  }),
);

const others: readonly Texts[] = [
  {
    sort: "stiffener",
    name: "Metal stiffener",
    outside: "1.27 mm",
    takes: ".038 in",
    endHole: "open",
    length: "31",
  },
  {
    sort: "extension",
    name: "Jejunal extension 9",
    outside: "9 f",
    takes: ".035 in",
    endHole: "open",
    length: "95",
  },
];

export const inventedShelf: readonly Texts[] = [
  ...wires,
  ...needles,
  ...dilators,
  ...tubes,
  ...sheaths,
  ...others,
];
