import { act, call, emptied, person, type Story, tube } from "#seed-demo/story.ts";

/** An abscess drain whose output falls, with a gap and an upsize: the net days tell which of them are complete. */
const fallingOutput: Story = {
  patient: person("Fennimoor", "Tabitha", {
    number: "004721",
    birthOn: "16 jul 1983",
    telephones: "555 0212",
  }),
  acts: [
    act(12, {
      at: "11:00",
      form: "placed",
      tube: "abscess",
      texts: {
        kind: "abscess drain",
        size: "8 f",
        when: "today 10:30",
        cavity: "left subphrenic",
        takes: ".035 in",
        retention: "locking loop",
        flushOrder: "10 mL x 2 a day",
      },
    }),
    call(11, "abscess", "No fever, flushes easily."),
    emptied(11, "abscess", { drained: "88", flushGiven: "10", characters: "purulent" }),
    emptied(10, "abscess", { drained: "95", flushGiven: "20", characters: "purulent" }),
    emptied(9, "abscess", { drained: "80", flushGiven: "20", characters: "purulent" }),
    act(8, {
      at: "13:00",
      form: "upsized",
      tube: "abscess",
      texts: { when: "today 12:30", size: "12 f", takes: ".038 in" },
    }),
    emptied(8, "abscess", { at: "12:30", drained: "50", flushGiven: "10", characters: "purulent" }),
    call(7, "abscess", "Better since the larger tube."),
    emptied(7, "abscess", { drained: "72", flushGiven: "20", characters: "serous, purulent" }),
    emptied(6, "abscess", { drained: "54", flushGiven: "20", characters: "serous" }),
    emptied(4, "abscess", { drained: "62", flushGiven: "?", characters: "serous" }),
    emptied(3, "abscess", { drained: "27", flushGiven: "20", characters: "serous" }),
    emptied(2, "abscess", { drained: "26", flushGiven: "20", characters: "serous" }),
    emptied(1, "abscess", { drained: "20", flushGiven: "30", characters: "serous" }),
    emptied(0, "abscess", { at: "07:30", drained: "24", flushGiven: "20", characters: "serous" }),
  ],
};

/** Lost on day six and newly punctured on the same side: the tract's age starts again. */
const newTract: Story = {
  patient: person("Oddwater", "Leopold", { number: "004722", birthOn: "9 oct 1969", telephones: "555 0221" }),
  acts: [
    tube(26, "pelvic", { kind: "abscess drain", size: "10 f", cavity: "pelvic", retention: "locking loop" }),
    call(24, "pelvic", "Well."),
    act(20, { form: "fell out", tube: "pelvic", texts: { when: "today 09:00", whole: "yes" } }),
    act(20, {
      at: "16:00",
      form: "new puncture",
      tube: "pelvic",
      texts: { when: "today 15:00", size: "10 f" },
    }),
    call(18, "pelvic", "Sore at the new site."),
  ],
};

/** A stent without an operator's date: due now, and past the ceiling soon. */
const stentWithoutDate: Story = {
  patient: person("Tumbleweir", "Sybella", {
    number: "004723",
    birthOn: "25 may 1955",
    telephones: "555 0233",
  }),
  acts: [tube(84, "left", { kind: "jj l", size: "6 f", from: "urology, Fernhollow" })],
};

/** A stent with its date, and a second one on the other side that has come out. */
const stents: Story = {
  patient: person("Saltmarrow", "Horatio", {
    number: "004724",
    birthOn: "1 jan 1977",
    telephones: "555 0240 evenings",
  }),
  acts: [
    tube(50, "right", { kind: "stent r", size: "7 f", plan: "remove by +70 Dr Hazelbarrow" }),
    call(48, "right", "Knows that a stent is inside and when it comes out."),
    tube(50, "left", { kind: "stent l", size: "7 f", plan: "remove by +28" }),
    act(21, {
      form: "removed",
      tube: "left",
      texts: {
        whole: "yes",
        loopReleased: "yes",
        when: "today",
        byWhom: "Dr Hazelbarrow",
        seenHow: "cystoscopy",
      },
    }),
  ],
};

/** Out by telephone: told, not seen. */
const toldByTelephone: Story = {
  patient: person("Candlewhit", "Mervyn", {
    number: "004725",
    birthOn: "14 sep 1944",
    telephones: "555 0255",
  }),
  acts: [
    tube(35, "drain", {
      kind: "abscess drain",
      size: "8 f",
      cavity: "right lower quadrant",
      retention: "locking loop",
    }),
    call(33, "drain", "Well."),
    act(3, { form: "removed", tube: "drain", texts: { whole: "?", when: "-1", toldBy: "the home nurse" } }),
  ],
};

/** Pulled back to the first mark at the skin. */
const pulledBack: Story = {
  patient: person("Inkwell-Rushby", "Delphine", {
    number: "004726",
    birthOn: "8 aug 1990",
    telephones: "555 0262",
  }),
  acts: [
    tube(5, "drain", {
      kind: "abscess drain",
      size: "10 f",
      cavity: "perihepatic",
      externalLength: "12 cm",
      retention: "locking loop",
    }),
    act(1, {
      at: "18:10",
      by: "caller",
      form: "partly dislodged",
      tube: "drain",
      texts: { when: "today", externalLength: "16 cm" },
    }),
  ],
};

/** Died with the tube in place: no step is left, and it can be undone. */
const died: Story = {
  patient: person("Hollowmere", "Winifred", {
    number: "004727",
    birthOn: "11 nov 1938",
    telephones: "555 0270",
  }),
  acts: [
    tube(60, "right", { kind: "pcn r", size: "8 f" }),
    call(58, "right", "Comfortable at home."),
    act(13, { form: "died", texts: { when: "today", toldBy: "the family doctor" } }),
  ],
};

/** Placed yesterday: the first call is due. */
const placedYesterday: Story = {
  patient: person("Nettlesby", "Gideon", {
    number: "004728",
    birthOn: "27 feb 1963",
    telephones: "555 0281",
  }),
  acts: [tube(1, "left", { kind: "pcn l", size: "8 f", takes: ".035 in", retention: "locking loop" })],
};

export const others: readonly Story[] = [
  fallingOutput,
  newTract,
  stentWithoutDate,
  stents,
  toldByTelephone,
  pulledBack,
  died,
  placedYesterday,
];
