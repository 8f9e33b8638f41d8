import { act, call, person, type Story, tube } from "#seed-demo/story.ts";

/** Left out of step with right: two tubes, two clocks; the left is past its latest date. */
const twoNephrostomies: Story = {
  patient: person("Brackenfold", "Ottoline", {
    number: "004711",
    birthOn: "3 apr 1951",
    telephones: "555 0117 after 5 pm",
  }),
  acts: [
    tube(190, "left", {
      kind: "pcn l",
      size: "8 f",
      takes: ".035 in",
      retention: "locking loop",
      cancerObstruction: "yes",
    }),
    tube(150, "right", { kind: "pcn r", size: "8 f", takes: ".038 in", retention: "locking loop" }),
    call(148, "right", "Draining well, dressing dry."),
    act(98, { form: "exchanged", tube: "left", texts: { when: "today" } }),
    call(96, "left", "No pain, clear urine."),
    act(70, { form: "exchanged", tube: "right", texts: { when: "today", size: "10 f", takes: ".038 in" } }),
    call(69, "right", "Well."),
    act(30, {
      form: "checked",
      tube: "left",
      texts: {
        when: "today",
        finding: "Loop in the renal pelvis.",
        study: "nephrostogram",
        concerns: "hard to flush",
      },
    }),
  ],
};

/** An exchange planned for today with a wire that the package of the tube in place does not promise to take. */
const plannedToday: Story = {
  patient: person("Mossgate", "Perrin", { number: "004712", birthOn: "19 nov 1960", telephones: "555 0122" }),
  acts: [
    tube(77, "left", {
      kind: "nephrostomy",
      side: "left",
      size: "8 f",
      takes: ".035 in",
      retention: "locking loop",
      bores: "hub 2.0 mm, shaft 1.9 mm, end hole .035 in",
    }),
    call(75, "left", "Knows the date of the exchange."),
    act(6, {
      form: "exchange planned",
      tube: "left",
      texts: { on: "+6", wire: ".038 in", size: "10 f", takes: ".038 in" },
    }),
  ],
};

/** A stone former: the shorter row wins, with its reason. */
const stoneFormer: Story = {
  patient: person("Thistlewick", "Amabel", {
    number: "004713",
    birthOn: "7 feb 1972",
    telephones: "555 0131 mornings",
  }),
  acts: [
    act(45, { form: "conditions noted", texts: { stoneFormer: "yes" } }),
    tube(44, "right", { kind: "pcn", side: "r", size: "8.5 f", retention: "locking loop" }),
    call(42, "right", "A little blood on day one, clear since."),
  ],
};

/** Pregnant: earlier still; the physician has the exchange by name. */
const expecting: Story = {
  patient: person("Quillfeather", "Rosamund", {
    number: "004714",
    birthOn: "12 jun 1995",
    telephones: "555 0140",
  }),
  acts: [
    act(20, { form: "conditions noted", texts: { pregnancy: "yes" } }),
    tube(20, "right", { kind: "pcn r", size: "8 f", takes: ".035 in", retention: "locking loop" }),
    call(18, "right", "Well, afebrile."),
  ],
};

/** Exchanged in another hospital at night: reported, size unknown until seen. */
const exchangedElsewhere: Story = {
  patient: person("Lanternby", "Crispin", {
    number: "004715",
    birthOn: "30 aug 1948",
    telephones: "555 0152",
    language: "Welsh",
    needsInterpreter: "yes",
  }),
  acts: [
    tube(120, "transplant", { kind: "nephrostomy", side: "tx", size: "8 f", retention: "locking loop" }),
    act(119, { form: "conditions noted", texts: { transplantKidney: "yes", singleKidney: "yes" } }),
    call(117, "transplant", "Well."),
    act(9, {
      form: "exchanged",
      tube: "transplant",
      texts: { when: "-2", elsewhere: "the hospital in Fernhollow" },
    }),
  ],
};

/** Fell out this morning and nobody has decided yet. */
const fellOut: Story = {
  patient: person("Pebblecroft", "Ignatia", {
    number: "004716",
    birthOn: "21 dec 1957",
    telephones: "555 0160",
  }),
  acts: [
    tube(9, "left", { kind: "pcn l", size: "8 f", retention: "locking loop" }),
    call(7, "left", "Draining, a little sore."),
    act(0, {
      at: "07:40",
      by: "caller",
      form: "fell out",
      tube: "left",
      texts: { when: "today", whole: "yes", note: "Found in the bed. Patient well." },
    }),
  ],
};

/** Taken over from elsewhere: nobody knows since when. */
const undated: Story = {
  patient: person("Wrenhollow", "Barnaby", { number: "004717", birthOn: "?", telephones: "555 0171" }),
  acts: [tube(4, "right", { kind: "pcn r", size: "?", when: "?", from: "a hospital abroad" })],
};

/** Nephrostomy, then nephroureteral catheter, then ureteral stent: each conversion closes one record and opens the next. */
const converted: Story = {
  patient: person("Larkspindle", "Edwin", {
    number: "004718",
    birthOn: "2 mar 1966",
    telephones: "555 0184",
  }),
  acts: [
    tube(140, "first", { kind: "pcn l", size: "8 f", retention: "locking loop" }),
    call(138, "first", "Well."),
    act(110, {
      form: "converted",
      tube: "first",
      opens: "second",
      texts: { kind: "nephroureteral", size: "8.5 f", when: "today" },
    }),
    act(108, { form: "capped", tube: "second", texts: { when: "today", bagAtHome: "yes" } }),
    call(107, "second", "Capped, no pain, no fever."),
    act(60, {
      form: "converted",
      tube: "second",
      opens: "third",
      texts: { kind: "stent", size: "7 f", when: "today", plan: "remove by +80 Dr Hazelbarrow" },
    }),
    call(58, "third", "Knows that a stent is inside and when it comes out."),
  ],
};

export const kidneys: readonly Story[] = [
  twoNephrostomies,
  plannedToday,
  stoneFormer,
  expecting,
  exchangedElsewhere,
  fellOut,
  undated,
  converted,
];
