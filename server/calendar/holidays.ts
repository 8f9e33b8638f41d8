import type { Database } from "#db/sqlite.ts";
import { viewCalendar } from "#server/calendar/view-calendar.ts";
import { type ClinicCalendar, whyShut } from "#shared/day/clinic-days.ts";
import { addDays, type Day, day } from "#shared/day/day.ts";
import type { AskingHolidays } from "#shared/record/calendar/asked-schema.ts";
import type { Choice } from "#shared/record/field-spec.ts";

/** A public holiday as the library dates it: a proposal, which becomes the clinic's only when somebody adds it. */
export type Holiday = { readonly on: Day; readonly name: string };

const HOUR_MS = 3_600_000;
/** Hours by which a day may be short, where clocks go forward over it. */
const SHORT_DAY = 3;

/** The tables of all countries are large, and asked for once a year: they are read when somebody asks. */
const library = async () => (await import("date-holidays")).default;

type Dated = { readonly date: string; readonly start: Date; readonly end: Date; readonly name: string };

/** Each whole day of a holiday. What begins with the evening before counts from its own day on. */
function daysOf({ date, start, end, name }: Dated): readonly Holiday[] {
  const hours = (end.getTime() - start.getTime()) / HOUR_MS;
  const days = Math.max(1, Math.floor((hours + SHORT_DAY) / 24));
  const first = day(date.slice(0, 10));
  return Array.from({ length: days }, (_, away) => ({ on: addDays(first, away), name }));
}

/** What falls on one day is one proposal. */
function oneADay(all: readonly Holiday[]): readonly Holiday[] {
  const names = new Map<Day, string[]>();
  for (const { on, name } of all) names.set(on, [...(names.get(on) ?? []), name]);
  return [...names]
    .map(([on, own]) => ({ on, name: [...new Set(own)].join(", ") }))
    .toSorted((a, b) => (a.on < b.on ? -1 : 1));
}

/** Public holidays of a year as they are kept, those moved from a weekend included, in order; empty for a country that is not in the list. */
export async function publicHolidays({ country, region, year }: AskingHolidays): Promise<readonly Holiday[]> {
  const Holidays = await library();
  const [state, part] = region.split("-");
  const dates = new Holidays();
  dates.init(country, state ?? "", part ?? "", { types: ["public"] });
  // A day kept for one of the next year may lie in this one: 1 January on a Saturday.
  const all = [year - 1, year, year + 1].flatMap((of) => dates.getHolidays(of, "en") || []);
  return oneADay(all.flatMap(daysOf)).filter(({ on }) => on.startsWith(`${year}-`));
}

const asChoices = (names: Record<string, string> | undefined): readonly Choice[] =>
  Object.entries(names ?? {}).map(([value, label]) => ({ value, label }));

/** The parts of a country with days of their own; "BY-A" is a part of a part. */
function regionsIn(dates: InstanceType<Awaited<ReturnType<typeof library>>>, country: string) {
  return asChoices(dates.getStates(country, "en")).flatMap((state) => [
    state,
    ...asChoices(dates.getRegions(country, state.value, "en")).map(({ value, label }) => ({
      value: `${state.value}-${value}`,
      label: `${state.label}: ${label}`,
    })),
  ]);
}

/** A proposal beside the calendar: whether the clinic is shut on that day already, and by what. */
export type ProposedHoliday = Holiday & { readonly stands: ReturnType<typeof whyShut> };

const beside = (holiday: Holiday, calendar: ClinicCalendar): ProposedHoliday => ({
  ...holiday,
  stands: whyShut(holiday.on, calendar),
});

/** Countries, regions of the one that is asked for, and its holidays of the year that are still to come. Writes nothing. */
export async function proposeHolidays(db: Database, asked: AskingHolidays) {
  const { calendar, today } = viewCalendar(db);
  const dates = new (await library())();
  const countries = asChoices(dates.getCountries("en"));
  const known = countries.some(({ value }) => value === asked.country);
  const regions = known ? regionsIn(dates, asked.country) : [];
  const region = regions.some(({ value }) => value === asked.region) ? asked.region : "";
  const all = known ? await publicHolidays({ ...asked, region }) : [];
  const coming = all.filter(({ on }) => on >= today);
  return {
    today,
    version: calendar.version,
    countries,
    regions,
    country: known ? asked.country : null,
    region,
    year: asked.year,
    past: all.length - coming.length,
    holidays: coming.map((holiday) => beside(holiday, calendar)),
  };
}
