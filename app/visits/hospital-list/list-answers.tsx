"use client";

import type { ReactNode } from "react";
import { Field } from "#app/ui/field.tsx";
import type { BookingAnswers, HospitalPreview } from "#app/visits/hospital-list/hospital-preview.ts";
import styles from "./hospital-list.module.css";

const LEFT_OUT = "left out";

const orders = [
  { value: "", label: "Choose" },
  { value: "day first", label: "The day: 3/4 is 3 April" },
  { value: "month first", label: "The month: 3/4 is 4 March" },
];

const acts = [
  { value: "", label: "Ask row by row" },
  { value: "exchange", label: "exchange" },
  { value: "check", label: "check" },
  { value: "removal", label: "removal" },
];

type ListAnswersProps = {
  readonly preview: HospitalPreview;
  readonly answers: BookingAnswers;
  readonly change: (answers: BookingAnswers) => void;
};

/** What is asked once of a whole list: which column says what, the order of its dates, and what holds where a row says nothing. */
export function ListAnswers({ preview, answers, change }: ListAnswersProps): ReactNode {
  const { headings, fields, asksOrder, problems } = preview;
  const problemOf = (name: string): string | undefined =>
    problems.find(({ field }) => field === name)?.sentence;
  const says = (at: number, value: string): void => {
    const columns = headings.map((_, index) => answers.columns?.[index] ?? LEFT_OUT);
    change({ ...answers, columns: columns.with(at, value as (typeof columns)[number]) });
  };
  return (
    <div className={styles.answers}>
      <fieldset className={styles.columns}>
        <legend>What each column says</legend>
        {/* Columns are never put in another order, and two may have one title. */}
        {headings.map((title, at) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: a column is known by its place alone.
          <label key={at}>
            <span>{title}</span>
            <select
              value={answers.columns?.[at] ?? LEFT_OUT}
              onChange={(event) => says(at, event.target.value)}
            >
              <option value={LEFT_OUT}>Left out</option>
              {fields.map(({ value, label }) => (
                <option key={value} value={value}>
                  {label}
                </option>
              ))}
            </select>
          </label>
        ))}
      </fieldset>
      {problemOf("columns") !== undefined && <strong role="alert">{problemOf("columns")}</strong>}
      {asksOrder && (
        <Field
          name="dateOrder"
          label="First in a date"
          choices={orders}
          problem={problemOf("dateOrder")}
          control={{
            value: answers.dateOrder ?? "",
            onChange: ({ target: { value } }: { target: { value: string } }) =>
              change({
                ...answers,
                dateOrder: value === "day first" || value === "month first" ? value : null,
              }),
          }}
        />
      )}
      <Field
        name="act"
        label="What is done"
        hint="where a row does not say"
        choices={acts}
        control={{
          value: answers.act ?? "",
          onChange: ({ target: { value } }: { target: { value: string } }) =>
            change({
              ...answers,
              act: value === "exchange" || value === "check" || value === "removal" ? value : null,
            }),
        }}
      />
      <Field
        name="where"
        label="Where"
        hint="where a row does not say"
        control={{
          value: answers.where,
          maxLength: 200,
          onChange: ({ target: { value } }: { target: { value: string } }) =>
            change({ ...answers, where: value }),
        }}
      />
    </div>
  );
}
