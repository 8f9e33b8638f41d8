import { act, call, emptied, person, type Story, tube } from "#seed-demo/story.ts";

/**
 * What the patients of a kept image have been through: several kinds, partial and unknown dates, a conversion, a tube that is out, a death,
 * output with an estimate and a flush that nobody recorded. Few, as the image is kept as text.
 */

const nephrostomies: Story = {
  patient: person("Imagewell", "Ottilie", {
    number: "900101",
    secondNumber: "X-77",
    secondIssuer: "Fernhollow",
    birthOn: "3 apr 1951",
    telephones: "555 0901 after 5 pm",
  }),
  acts: [
    act(150, { form: "conditions noted", texts: { stoneFormer: "?", diabetes: "yes" } }),
    tube(149, "left", {
      kind: "pcn l",
      size: "8 f",
      takes: ".035 in",
      retention: "locking loop",
      bores: "hub 2.0 mm, shaft 1.9 mm, end hole .035 in",
    }),
    call(147, "Draining well."),
    act(72, { form: "exchanged", tube: "left", texts: { when: "today 09:40", size: "10 f" } }),
    act(30, {
      form: "checked",
      tube: "left",
      texts: { study: "nephrostogram", finding: "Loop in the pelvis.", concerns: "hard to flush" },
    }),
    act(9, {
      form: "exchange planned",
      tube: "left",
      texts: { on: "+9", wire: ".038 in", size: "10 f", takes: ".038 in" },
    }),
    tube(60, "right", { kind: "pcn r", size: "?", when: "in march", from: "?" }),
  ],
};

const abscess: Story = {
  patient: person("Keepsake", "Alaric", { number: "900102", birthOn: "?", telephones: "555 0902" }),
  acts: [
    tube(12, "drain", {
      kind: "abscess drain",
      size: "8.5 f",
      cavity: "left subphrenic",
      flushOrder: "10 mL x 2 a day",
      when: "today 09:30",
    }),
    emptied(11, "drain", { drained: "600", flushGiven: "0", procedureAspirate: "yes" }),
    emptied(10, "drain", { drained: "45.5", flushGiven: "20", characters: "purulent" }),
    emptied(9, "drain", { drained: "30", flushGiven: "?", measuredBy: "estimate", leak: "damp" }),
    act(8, {
      form: "upsized",
      tube: "drain",
      texts: { size: "12 f", plan: "review by +20 Dr Hazelbarrow, cavity" },
    }),
    act(3, { by: "caller", form: "leaking", tube: "drain", texts: { soaking: "?", toldBy: "the ward" } }),
  ],
};

const converted: Story = {
  patient: person("Lastingham", "Philippa", {
    number: "900103",
    birthOn: "29 feb 1972",
    telephones: "555 0903",
    language: "Welsh",
    needsInterpreter: "yes",
  }),
  acts: [
    tube(100, "first", { kind: "pcn r", size: "8 f", retention: "locking loop" }),
    act(70, {
      form: "converted",
      tube: "first",
      opens: "second",
      texts: { kind: "nephroureteral", size: "8.5 f" },
    }),
    act(69, { form: "capped", tube: "second", texts: { bagAtHome: "yes", covers: "the ward" } }),
    act(40, {
      form: "converted",
      tube: "second",
      opens: "third",
      texts: { kind: "stent", size: "7 f", plan: "remove by +50" },
    }),
  ],
};

const feeding: Story = {
  patient: person("Oldcopy", "Fenella", { number: "900104", birthOn: "8 aug 1968", telephones: "555 0904" }),
  acts: [
    tube(55, "feeding", {
      kind: "balloon gastrostomy",
      size: "20 f",
      balloon: "10 mL",
      tractSince: "2025",
      from: "a hospital abroad",
    }),
    act(20, { form: "balloon checked", tube: "feeding", texts: { found: "8", refilled: "10" } }),
    tube(30, "chest", { kind: "chest tube", side: "r", size: "12 f" }),
    act(25, {
      form: "removed",
      tube: "chest",
      texts: { whole: "yes", loopReleased: "yes", byWhom: "Dr Hazelbarrow", seenHow: "whole on the table" },
    }),
  ],
};

const out: Story = {
  patient: person("Yesteryear", "Gwendolen", {
    number: "900105",
    birthOn: "1 jan 1940",
    telephones: "555 0905",
  }),
  acts: [
    tube(200, "biliary", { kind: "external biliary", side: "l", size: "~10 f" }),
    act(1, {
      by: "caller",
      form: "fell out",
      tube: "biliary",
      texts: { when: "-1", whole: "?", toldBy: "a daughter" },
    }),
  ],
};

const died: Story = {
  patient: person("Farewell", "Lucan", { number: "900106", birthOn: "12 dec 1933", telephones: "555 0906" }),
  acts: [
    tube(90, "bladder", { kind: "spc", size: "16 f", balloon: "10 mL" }),
    act(5, { form: "died", texts: { when: "-6", toldBy: "the family doctor" } }),
  ],
};

export const imageStories: readonly Story[] = [nephrostomies, abscess, converted, feeding, out, died];
