"use client";

import { useRouter } from "next/navigation";
import { type FormEvent, type ReactNode, useState } from "react";
import { api } from "#app/_trpc/client.ts";
import type { ImportView } from "#app/import/import-view.ts";
import { useScriptRuns } from "#app/import/use-script-runs.ts";
import { DataTable } from "#app/ui/data-table.tsx";
import { ErrorSummary, type Problem } from "#app/ui/error-summary.tsx";
import { Field } from "#app/ui/field.tsx";
import { sendAct } from "#app/ui/recording/send-act.ts";
import { labelOf, type SheetField, sheetFields } from "#shared/sheet/sheet-fields.ts";
import { refusalSentence } from "#shared/words/refusals.ts";
import styles from "./import.module.css";

type AnswersFormProps = Pick<ImportView, "columns" | "answers" | "order" | "unclearName"> & {
  readonly sheetId: string;
  /** The rows can be read: then bringing them in is the act that the page is for. */
  readonly isAnswered: boolean;
};

const LEFT_OUT = "left out";

const options = [
  { value: LEFT_OUT, label: "Left out" },
  ...sheetFields.map((field) => ({ value: field, label: labelOf(field) })),
];

const orders = [
  { value: "", label: "Choose" },
  { value: "day first", label: "The day: 3/4 is 3 April" },
  { value: "month first", label: "The month: 3/4 is 4 March" },
];

const nameOrders = [
  { value: "", label: "Choose" },
  { value: "family name first", label: "The family name" },
  { value: "given name first", label: "The given name" },
];

/** What the list's own dates say of their order, with the row that shows it. */
function orderWords({ proofs, unclear, unclearCount, readAs }: ImportView["order"]): string {
  const day = proofs["day first"];
  const month = proofs["month first"];
  if (day !== null && month !== null)
    return `Both orders stand in this list: row ${day.row} says ${day.text}, row ${month.row} ${month.text}. Rows of the order not chosen are set aside.`;
  const shown = day ?? month;
  if (shown !== null)
    return `Row ${shown.row} says ${shown.text}: read with the ${readAs === "day first" ? "day" : "month"} first.`;
  return unclear === null
    ? "No date here can be read two ways."
    : `Row ${unclear.row} says ${unclear.text}; ${unclearCount} dates can be read two ways.`;
}

type Column = AnswersFormProps["columns"][number] & { readonly index: number };

function ColumnsTable({ columns }: Pick<AnswersFormProps, "columns">): ReactNode {
  return (
    <DataTable
      caption="Columns of the list"
      columns={[
        { head: "Heading", cell: ({ title }) => title },
        {
          head: "Its first cells",
          cell: ({ samples }) => <span className={styles.samples}>{samples.join(" · ")}</span>,
        },
        {
          head: "Says",
          cell: ({ title, says, index }) => (
            <select
              name={`column${index}`}
              defaultValue={says}
              aria-label={`What the column "${title}" says`}
            >
              {options.map(({ value, label }) => (
                <option key={value} value={value}>
                  {label}
                </option>
              ))}
            </select>
          ),
        },
      ]}
      rows={columns.map((column, index): Column => ({ ...column, index }))}
      keyOf={({ index }) => String(index)}
      none="The list has no columns."
    />
  );
}

/** Which column says what, and what is asked once for the whole list. */
export function AnswersForm(props: AnswersFormProps): ReactNode {
  const { sheetId, columns, answers, order, unclearName, isAnswered } = props;
  const router = useRouter();
  const [problems, setProblems] = useState<readonly Problem[]>([]);
  const [attempt, setAttempt] = useState(0);
  const runs = useScriptRuns();

  const submit = async (event: FormEvent<HTMLFormElement>): Promise<void> => {
    event.preventDefault();
    const typed = new FormData(event.currentTarget);
    const said = (name: string): string => String(typed.get(name) ?? "");
    const given = {
      columns: columns.map((_, index) => said(`column${index}`) as SheetField | typeof LEFT_OUT),
      dateOrder: (said("dateOrder") || null) as typeof answers.dateOrder,
      nameOrder: (said("nameOrder") || null) as typeof answers.nameOrder,
      issuer: said("issuer").trim() || answers.issuer,
    };
    const sent = await sendAct(() => api.sheet.answer.mutate({ sheetId, answers: given }));
    setAttempt((count) => count + 1);
    if (sent.kind === "saved") {
      setProblems([]);
      return router.refresh();
    }
    setProblems(
      sent.kind === "refused"
        ? sent.refusals.map((refusal) => ({ sentence: refusalSentence(refusal) }))
        : [{ sentence: "No answer came from the server. Try again." }],
    );
  };
  return (
    <form method="post" onSubmit={(event) => void submit(event)}>
      <ErrorSummary problems={problems} attempt={attempt} />
      <ColumnsTable columns={columns} />
      <div className={styles.questions}>
        <Field
          name="dateOrder"
          label="First in a date"
          hint={orderWords(order)}
          choices={orders}
          control={{ defaultValue: answers.dateOrder ?? order.readAs ?? "" }}
        />
        {unclearName !== null && (
          <Field
            name="nameOrder"
            label="First in a name"
            hint={`Row ${unclearName} has no comma between the parts of the name.`}
            choices={nameOrders}
            control={{ defaultValue: answers.nameOrder ?? "" }}
          />
        )}
        <Field
          name="issuer"
          label="Numbers issued by"
          hint="where no column says so"
          control={{ defaultValue: answers.issuer }}
        />
      </div>
      <div className={styles.acts}>
        <button type="submit" disabled={!runs} className={isAnswered ? styles.second : undefined}>
          Read the rows so
        </button>
      </div>
    </form>
  );
}
