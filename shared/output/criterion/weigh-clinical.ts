import type { ClinicalState, FoundAt } from "#shared/clinical/clinical-state.ts";
import { type Instant, startOfDay, type Zone } from "#shared/day/instant.ts";
import type { CriterionReason, Weighed } from "#shared/output/criterion/criterion.ts";
import { noEvidence } from "#shared/output/criterion/weighed.ts";
import { HOUR_MS } from "#shared/output/rate.ts";
import { instantOf } from "#shared/output/segment-cuts.ts";
import type { OutputRows } from "#shared/protocol/output-rows.ts";
import { known } from "#shared/tube/certainty.ts";

export type ClinicalRule = {
  readonly clinical: ClinicalState;
  readonly rows: Pick<OutputRows, "clinicalStateHours" | "fever">;
  readonly zone: Zone;
  readonly now: Instant;
};

/** Both have to be known and fresh: without them nobody can say that there is no fever. */
const needed = ["temperature", "chills"] as const;

/** Its age from the earliest that it can be of; undated is older than anything. */
const isOlder = (found: FoundAt, hours: number, { zone, now }: ClinicalRule): boolean => {
  const at = instantOf(found, zone);
  return at === null || now - at > hours * HOUR_MS;
};

function ageFaults(rule: ClinicalRule): CriterionReason[] {
  const row = rule.rows.clinicalStateHours;
  if (row === null) return [{ code: "no-row", of: "age of the clinical state" }];
  return needed.flatMap((item): CriterionReason[] => {
    const found = rule.clinical[item];
    // An estimate of a temperature is no temperature.
    if (found === undefined || found.fact.certainty === "unknown" || found.fact.certainty === "estimated")
      return [{ code: "clinical-unknown", item }];
    if (!isOlder(found, row.hours, rule)) return [];
    return [{ code: "clinical-too-old", item, when: found.when, hours: row.hours }];
  });
}

/** What was found last, however old: a fever that nobody has taken back stands. */
function signs({ clinical, rows }: ClinicalRule): CriterionReason[] {
  if (rows.fever === null) return [{ code: "no-row", of: "fever" }];
  const reasons: CriterionReason[] = [];
  const { temperature, chills, feels, imaging } = clinical;
  const celsius = temperature && known(temperature.fact)?.value;
  if (temperature && celsius !== undefined && celsius >= rows.fever.fromC)
    reasons.push({ code: "fever", celsius, when: temperature.when });
  if (chills && known(chills.fact) === true) reasons.push({ code: "shaking-chills", when: chills.when });
  if (feels && known(feels.fact) === "very unwell")
    reasons.push({ code: "feels-very-unwell", when: feels.when });
  const film = imaging && known(imaging.fact);
  if (film?.finding === "unchanged" || film?.finding === "larger")
    reasons.push({ code: "imaging-against", finding: film.finding, day: film.on });
  return reasons;
}

const eventsOf = ({ clinical }: ClinicalRule): readonly string[] =>
  [clinical.temperature, clinical.chills, clinical.feels, clinical.imaging].flatMap((found) =>
    found === undefined ? [] : [found.eventId],
  );

/** Low alone is not enough: the patient is the other half. Unknown, too old, feverish or a collection that stays all say "cannot tell". */
export const weighClinical = (rule: ClinicalRule): Partial<Weighed> => ({
  unknown: [...signs(rule), ...ageFaults(rule)],
  evidence: { ...noEvidence, events: eventsOf(rule) },
});

type FilmRule = ClinicalRule;

/** The lung on the newest film: up, and no older than the row. */
export function weighFilm(rule: FilmRule): Partial<Weighed> {
  const { clinical, rows, zone, now } = rule;
  const found = clinical.imaging;
  const film = found && known(found.fact);
  const row = rows.clinicalStateHours;
  if (row === null) return { unknown: [{ code: "no-row", of: "age of the clinical state" }] };
  if (found === undefined || film === undefined || !film.finding.startsWith("lung"))
    return { unknown: [{ code: "no-film" }] };
  const evidence = { ...noEvidence, events: [found.eventId] };
  // A film has a day and no hour: its age counts from the first of that day.
  if (now - startOfDay(film.on, zone) > row.hours * HOUR_MS)
    return { unknown: [{ code: "film-too-old", day: film.on, hours: row.hours }], evidence };
  return film.finding === "lung up"
    ? { evidence }
    : { against: [{ code: "lung-not-up", day: film.on }], evidence };
}
