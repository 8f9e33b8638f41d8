import type { Metadata } from "next";
import type { ReactNode } from "react";
import styles from "#app/calendar/calendar.module.css";
import { calendarBook } from "#app/calendar/calendar-page.tsx";
import { HolidayBoxes } from "#app/calendar/holiday-boxes.tsx";
import type { Query } from "#app/lists/filter-address.ts";
import { ChangingPage } from "#app/record/changing-page.tsx";
import type { Choice } from "#shared/record/field-spec.ts";

export const metadata: Metadata = { title: "Propose holidays - Dwellbook" };

type HolidaysPageProps = { readonly searchParams: Promise<Query> };

/** Years on offer: this one and the next three. */
const YEARS = 4;

const oneWord = (word: string | string[] | undefined, longest: number): string =>
  typeof word === "string" && word.length <= longest ? word : "";

/** Public holidays of a country and a year as a library has them, to be taken over one by one. */
export default async function HolidaysPage({ searchParams }: HolidaysPageProps): Promise<ReactNode> {
  const query = await searchParams;
  return (
    <ChangingPage
      book={calendarBook}
      heading="Which holidays does the clinic keep?"
      content={async (api) => {
        const { today } = await api.calendar.view();
        const years = Array.from({ length: YEARS }, (_, away) => String(Number(today.slice(0, 4)) + away));
        const year = years.find((one) => one === query.year) ?? years[0];
        const proposed = await api.calendar.holidays({
          country: oneWord(query.country, 8),
          region: oneWord(query.region, 24),
          year: Number(year),
        });
        const { country, region, countries, regions } = proposed;
        return (
          <>
            <form className={styles.asked} method="get" action="/calendar/holidays" data-screen-only>
              <Chooser name="country" word="Country" value={country ?? ""} none="Choose" of={countries} />
              {regions.length > 0 && (
                <Chooser name="region" word="Region" value={region} none="The whole country" of={regions} />
              )}
              <Chooser
                name="year"
                word="Year"
                value={String(year)}
                of={years.map((one) => ({ value: one, label: one }))}
              />
              <button type="submit">Propose</button>
            </form>
            <p>
              A library proposes; it may lack a day or have one too many. What is added is the clinic's own,
              to be moved or taken away like any closure.
            </p>
            {country !== null && <HolidayBoxes key={`${country} ${region} ${year}`} proposed={proposed} />}
          </>
        );
      }}
    />
  );
}

type ChooserProps = {
  readonly name: string;
  readonly word: string;
  readonly value: string;
  readonly none?: string;
  readonly of: readonly Choice[];
};

function Chooser({ name, word, value, none, of }: ChooserProps): ReactNode {
  return (
    <label>
      {word}
      <select name={name} defaultValue={value}>
        {none !== undefined && <option value="">{none}</option>}
        {of.map((choice) => (
          <option key={choice.value} value={choice.value}>
            {choice.label}
          </option>
        ))}
      </select>
    </label>
  );
}
