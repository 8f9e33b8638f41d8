import type { Open } from "#app/output/reading-page.tsx";
import type { FormContext } from "#shared/record/form.ts";
import { readingBeside } from "#shared/record/output/reading-beside.ts";
import { tubeInForm } from "#shared/record/tube-in-form.ts";

/** What a reading of this tube is typed beside: what is logged of it, without the reading that is being corrected. */
export async function readingContext(
  { signed, view: { tube }, output }: Open,
  corrects: string | null,
): Promise<FormContext> {
  const beside = await signed.api.record.beside();
  const readings = output.readings.map(({ reading }) => reading).filter(({ id }) => id !== corrects);
  const { zone, now } = beside;
  const measured = { readings, zone, now, row: output.rows.output };
  return {
    ...beside,
    shelf: [],
    tube: tubeInForm(tube),
    tubes: [],
    opens: { tubeId: "", number: 0 },
    output: readingBeside(tube, measured, output.rows.plausible),
  };
}
