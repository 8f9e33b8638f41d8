import { day } from "#shared/day/day.ts";
import { instant, zone } from "#shared/day/instant.ts";
import type { FormContext, TubeInForm } from "#shared/record/form.ts";
import { confirmed } from "#shared/tube/certainty.ts";

export const leftNephrostomy: TubeInForm = {
  id: "tube-1",
  kind: "nephrostomy",
  role: "drains an organ",
  mode: "to bag",
  side: confirmed("left"),
  concerns: [],
  inSince: day("2026-08-20"),
  alarm: [],
};

/** Fri 6 Nov 2026, 15:30 in London, beside a left nephrostomy; a record that opens is the patient's second. */
export const formContext = (overrides: Partial<FormContext> = {}): FormContext => ({
  today: day("2026-11-06"),
  now: instant(Date.parse("2026-11-06T15:30Z")),
  zone: zone("Europe/London"),
  tube: leftNephrostomy,
  tubes: [],
  opens: { tubeId: "tube-2", number: 2 },
  staff: [
    { id: "staff-nurse", fullName: "Tansy Nurseworth", role: "nurse" },
    { id: "staff-physician", fullName: "Petra Physick", role: "physician" },
  ],
  shelf: [],
  ...overrides,
});
