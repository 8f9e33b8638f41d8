import type { Protocol } from "#shared/protocol/protocol.ts";
import type { PrerequisiteRow, RoomRow } from "#shared/protocol/visit-rows.ts";
import { visitActs } from "#shared/visit/visit-acts.ts";

const source = "CP";

/**
 * Room of the example table. Stents and bumpers are changed elsewhere or from within, chest tubes on the ward: minutes of a room
 * would mislead, and they have none.
 */
export const exampleRoom: RoomRow[] = [
  {
    kinds: ["nephrostomy", "nephroureteral catheter", "conduit catheter"],
    acts: ["exchange"],
    minutes: 30,
    further: 20,
    needs: ["fluoroscopy"],
    source,
  },
  { kinds: ["suprapubic catheter"], acts: ["exchange"], minutes: 20, further: null, needs: [], source },
  {
    kinds: ["cholecystostomy", "external biliary drain", "internal-external biliary drain"],
    acts: ["exchange"],
    minutes: 45,
    further: 30,
    needs: ["fluoroscopy"],
    source,
  },
  { kinds: ["balloon gastrostomy"], acts: ["exchange"], minutes: 20, further: 15, needs: [], source },
  {
    kinds: ["loop gastrostomy", "venting gastrostomy", "cecostomy"],
    acts: ["exchange"],
    minutes: 20,
    further: 15,
    needs: ["fluoroscopy"],
    source,
  },
  {
    kinds: ["gastrojejunostomy", "jejunostomy", "abscess drain", "pancreatic drain", "lymphocele drain"],
    acts: ["exchange"],
    minutes: 30,
    further: 20,
    needs: ["fluoroscopy"],
    source,
  },
  {
    kinds: [
      "nephrostomy",
      "nephroureteral catheter",
      "conduit catheter",
      "cholecystostomy",
      "external biliary drain",
      "internal-external biliary drain",
      "loop gastrostomy",
      "venting gastrostomy",
      "gastrojejunostomy",
      "jejunostomy",
      "cecostomy",
      "abscess drain",
      "pancreatic drain",
      "lymphocele drain",
    ],
    acts: ["check"],
    minutes: 20,
    further: 15,
    needs: ["fluoroscopy"],
    source,
  },
  {
    kinds: ["balloon gastrostomy", "suprapubic catheter"],
    acts: ["check"],
    minutes: 15,
    further: 10,
    needs: [],
    source,
  },
  {
    kinds: [
      "nephrostomy",
      "nephroureteral catheter",
      "cholecystostomy",
      "external biliary drain",
      "internal-external biliary drain",
    ],
    acts: ["removal"],
    minutes: 15,
    further: 10,
    needs: ["fluoroscopy"],
    source,
  },
  {
    kinds: [
      "abscess drain",
      "pancreatic drain",
      "lymphocele drain",
      "surgical drain",
      "balloon gastrostomy",
      "loop gastrostomy",
      "venting gastrostomy",
      "suprapubic catheter",
    ],
    acts: ["removal"],
    minutes: 15,
    further: 10,
    needs: [],
    source,
  },
  {
    kinds: ["tunnelled pleural catheter", "tunnelled peritoneal drain"],
    acts: ["removal"],
    minutes: 30,
    further: null,
    needs: [],
    source,
  },
];

const every = { acts: [...visitActs], kinds: [], leadHours: null, source } satisfies Partial<PrerequisiteRow>;

/** What comes before a visit in the example table. Of blood thinners it says who is asked, never for how many days one is held. */
export const exampleVisits: Protocol["visits"] = {
  prerequisites: [
    { ...every, thing: "signed order", workingDaysBefore: 5, says: "signed, with tube, side and act" },
    {
      ...every,
      thing: "blood thinners",
      workingDaysBefore: 5,
      says: "which, and who agreed the plan; both bleeding classes are shown",
    },
    {
      ...every,
      thing: "labs",
      acts: ["exchange", "removal"],
      workingDaysBefore: 2,
      says: "those that the bleeding class and the physician ask for, with their day",
    },
    {
      ...every,
      thing: "allergies",
      workingDaysBefore: 3,
      leadHours: 13,
      says: "contrast, antibiotics, latex, skin preparation; if a premedication is ordered, by mouth 13, 7 and 1 hours before",
      source: "the hours: MEM; rest CP",
    },
    {
      ...every,
      thing: "antibiotic cover",
      acts: ["exchange"],
      kinds: [
        "nephrostomy",
        "nephroureteral catheter",
        "conduit catheter",
        "suprapubic catheter",
        "cholecystostomy",
        "external biliary drain",
        "internal-external biliary drain",
      ],
      workingDaysBefore: 2,
      says: "whether, which and who ordered it, with the last culture and its day",
    },
    {
      ...every,
      thing: "fasting",
      acts: ["exchange"],
      workingDaysBefore: 1,
      says: "told when sedation is planned, with the hours; a tube feed counts as food",
    },
    {
      ...every,
      thing: "pregnancy test",
      acts: ["exchange", "check"],
      workingDaysBefore: 0,
      says: "where a pregnancy is possible and X-rays are used",
    },
    {
      ...every,
      thing: "escort",
      acts: ["exchange"],
      workingDaysBefore: 2,
      says: "who takes the patient home after sedation",
    },
    { ...every, thing: "interpreter", workingDaysBefore: 3, says: "booked for the visit, in which language" },
    {
      ...every,
      thing: "transport",
      workingDaysBefore: 2,
      says: "how the patient comes and goes; lying or sitting",
    },
    {
      ...every,
      thing: "lies prone",
      acts: ["exchange", "check"],
      kinds: ["nephrostomy", "nephroureteral catheter"],
      workingDaysBefore: 5,
      says: "whether the patient can lie on the front for so long, and how else",
    },
    {
      ...every,
      thing: "dialysis or chemotherapy",
      workingDaysBefore: 5,
      says: "on which days the patient cannot come, and when blood counts are low",
    },
    {
      ...every,
      thing: "isolation",
      workingDaysBefore: 1,
      says: "which, in a room that can; last of the list",
    },
  ],
  confirmed: { workingDaysBefore: 2, source },
};
