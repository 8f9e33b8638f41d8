"use client";

import { Fragment, type ReactNode, useEffect, useEffectEvent, useRef } from "react";
import { ChainAnswer, PairAnswer } from "#app/sizes/chain-answer.tsx";
import { startingPoints } from "#app/sizes/starting-points.ts";
import { controlName, ThingRow } from "#app/sizes/thing-row.tsx";
import { type Change, type Row, useThings } from "#app/sizes/use-things.ts";
import { WhichOfOurs } from "#app/sizes/which-of-ours.tsx";
import { fieldId } from "#app/ui/field.tsx";
import { chainOf } from "#shared/fit/chain.ts";
import type { PassageRows } from "#shared/fit/passage.ts";
import { namesOf } from "#shared/record/field-spec.ts";
import { type ChainReading, chainFields, readChain } from "#shared/record/shelf/read-chain.ts";
import type { ShelfType } from "#shared/shelf/shelf-type.ts";
import styles from "./sizes.module.css";

const [first] = startingPoints;

/** Where the keyboard goes after a change of the rows. */
function focusAfter(change: Change, before: readonly Row[], now: readonly Row[]): string | null {
  switch (change.do) {
    case "move":
      return controlName(change.key, `move${change.by}`);
    case "add":
      return fieldId(controlName(now.at(-1)?.key ?? 0, "sort"));
    case "start":
    case "put back":
      return fieldId(controlName(now[0]?.key ?? 0, "outside"));
    case "fill": {
      const at = before.findIndex(({ key }) => key === change.key);
      return fieldId(controlName(now[at]?.key ?? 0, "shelf"));
    }
    case "remove": {
      const at = before.findIndex(({ key }) => key === change.key);
      return fieldId(controlName((now[at] ?? now.at(-1))?.key ?? 0, "outside"));
    }
    case "type":
    case "choose sort":
      return null;
  }
}

type WhatPassesProps = { readonly rows: PassageRows; readonly shelf: readonly ShelfType[] };

/** Any chain without a patient: what passes through what, as it is typed. Nothing is sent and nothing is kept. */
export function WhatPasses({ rows: passageRows, shelf }: WhatPassesProps): ReactNode {
  const [{ rows, before }, dispatch] = useThings(first?.things ?? []);
  const last = useRef<{ readonly change: Change; readonly before: readonly Row[] } | null>(null);
  const fields = useRef<HTMLDivElement>(null);
  const change = (asked: Change): void => {
    last.current = { change: asked, before: rows };
    dispatch(asked);
  };

  useEffect(() => {
    if (last.current === null) return;
    const id = focusAfter(last.current.change, last.current.before, rows);
    last.current = null;
    if (id !== null) document.getElementById(id)?.focus();
  }, [rows]);

  // Keys pressed before the script ran count too.
  const opened = useEffectEvent(() => {
    for (const { key } of rows)
      for (const field of namesOf(chainFields)) {
        const text = fields.current?.querySelector<HTMLInputElement>(
          `[name="${controlName(key, field)}"]`,
        )?.value;
        if (text && text !== chainFields[field].initial) dispatch({ do: "type", key, field, text });
      }
  });
  useEffect(() => opened(), []);

  const reading = readChain(rows);
  const chain = reading.ok ? chainOf(reading.things, passageRows) : null;
  const innermost = chain?.pairs[0];
  return (
    <section className={styles.section}>
      <h2>A chain, the innermost first</h2>
      <fieldset className={styles.starts} data-screen-only>
        <legend>Begin with</legend>
        {startingPoints.map(({ word, things }) => (
          <button key={word} type="button" onClick={() => change({ do: "start", things })}>
            {word}
          </button>
        ))}
        {before !== null && (
          <button type="button" onClick={() => change({ do: "put back" })}>
            Put back what stood here
          </button>
        )}
      </fieldset>
      <div className={styles.work}>
        <div className={styles.answer}>
          {chain === null ? <p role="status">{unreadWords(rows, reading)}</p> : <ChainAnswer chain={chain} />}
          {innermost !== undefined && <WhichOfOurs pair={innermost} shelf={shelf} rows={passageRows} />}
          <p className={styles.caution}>
            By recorded facts only: what is crusted, kinked or wrongly labelled is not in them. Going on is
            the operator's judgement.
          </p>
        </div>
        <div ref={fields}>
          {rows.map((row, index) => (
            <Fragment key={row.key}>
              <PairAnswer pair={chain?.pairs[index - 1]} />
              <ThingRow
                {...{ row, shelf, change }}
                place={index + 1}
                of={rows.length}
                refusals={reading.ok ? [] : (reading.refusals[index] ?? [])}
              />
            </Fragment>
          ))}
          <p className={styles.moves} data-screen-only>
            <button type="button" onClick={() => change({ do: "add" })}>
              Add what goes round it
            </button>
          </p>
        </div>
      </div>
    </section>
  );
}

/** Which rows stand in the way of an answer. */
function unreadWords(rows: readonly Row[], reading: ChainReading): string {
  const those = rows.flatMap(({ sort }, index) =>
    !reading.ok && (reading.refusals[index]?.length ?? 0) > 0 ? [`${index + 1} (${sort})`] : [],
  );
  return `No answer yet: ${those.join(" and ")} cannot be read as it stands.`;
}
