import { withFindings } from "#shared/clinical/clinical-state.ts";
import { restsOn } from "#shared/tube/applied.ts";
import { confirmed } from "#shared/tube/certainty.ts";
import type { AnyEventOf, EventOf } from "#shared/tube/event.ts";
import type { Standing } from "#shared/tube/history.ts";
import { isTrue } from "#shared/tube/open-record.ts";
import type { PatientTubes } from "#shared/tube/state.ts";
import type { ReconcileAbout } from "#shared/tube/vocabulary.ts";

/** What is known of the patient beside the tubes. */
export type PatientNotes = Pick<
  PatientTubes,
  "conditions" | "clinical" | "hospice" | "whereabouts" | "reconciles" | "reportedOut"
>;

export const nothingNoted: PatientNotes = {
  conditions: {},
  clinical: {},
  hospice: null,
  whereabouts: null,
  reconciles: [],
  reportedOut: [],
};

export type PatientEvent = AnyEventOf<
  | "conditions noted"
  | "hospice decided"
  | "whereabouts noted"
  | "clinical state noted"
  | "reconcile asked"
  | "reported out"
  | "reconciled"
  | "records joined"
>;

/** In hospice, until noted otherwise: a decision stands as long as that does. */
function conditionsNoted(notes: PatientNotes, event: EventOf<"conditions noted">): PatientNotes {
  const { conditions } = event.payload;
  const next = { ...notes, conditions: { ...notes.conditions, ...conditions } };
  if (conditions.hospice === undefined) return next;
  if (!isTrue(conditions.hospice)) return { ...next, hospice: null };
  return { ...next, hospice: notes.hospice ?? { ...restsOn(event), decision: null } };
}

const agreed = (notes: PatientNotes, on: ReconcileAbout): PatientNotes => ({
  ...notes,
  reconciles: notes.reconciles.filter(({ about }) => about !== on),
  reportedOut: on === "which tube" ? [] : notes.reportedOut,
});

/** What an entry about the patient makes of what was known. */
export function notedOfPatient(notes: PatientNotes, event: PatientEvent, { when }: Standing): PatientNotes {
  switch (event.kind) {
    case "conditions noted":
      return conditionsNoted(notes, event);
    case "hospice decided": {
      const { note: _note, ...decision } = event.payload;
      return {
        ...notes,
        conditions: { ...notes.conditions, hospice: confirmed(true) },
        hospice: { ...restsOn(event), decision: { ...restsOn(event), ...decision } },
      };
    }
    case "whereabouts noted": {
      const { place, where } = event.payload;
      const discharged = place === "at home" && notes.whereabouts?.place === "inpatient";
      return { ...notes, whereabouts: { ...restsOn(event), place, where, when, discharged } };
    }
    case "clinical state noted": {
      const at = { ...restsOn(event), when, time: event.time };
      return { ...notes, clinical: withFindings(notes.clinical, event.payload.findings, at) };
    }
    case "reconcile asked": {
      const { about, says } = event.payload;
      return { ...notes, reconciles: [...notes.reconciles, { ...restsOn(event), about, says }] };
    }
    case "reported out": {
      const { candidates, toldBy } = event.payload;
      return {
        ...notes,
        reportedOut: [...notes.reportedOut, { ...restsOn(event), candidates, toldBy, when }],
      };
    }
    case "reconciled":
      return agreed(notes, event.payload.about);
    case "records joined":
      return agreed(notes, "two records of one patient");
  }
}
