"use client";

import { type ReactNode, useEffect, useRef, useState } from "react";
import { readAnySize } from "#shared/size/read-any-size.ts";
import { convertedDoubt, convertedRows } from "#shared/words/converted.ts";
import { refusalSentence } from "#shared/words/refusals.ts";
import styles from "./sizes.module.css";

/** One size in every unit of the trade, as it is typed. */
export function Convert(): ReactNode {
  const [text, setText] = useState("");
  const field = useRef<HTMLInputElement>(null);
  // Keys pressed before the script ran count too.
  useEffect(() => setText(field.current?.value ?? ""), []);
  return (
    <section className={styles.section}>
      <h2 id="convert">Convert</h2>
      <div className={styles.convert}>
        <div>
          <label className={styles.label} htmlFor="size">
            A size with its unit
          </label>
          <input
            ref={field}
            id="size"
            className={styles.size}
            autoComplete="off"
            aria-describedby="size-hint"
            onInput={(event) => setText(event.currentTarget.value)}
          />
          <p className={styles.hint} id="size-hint">
            8 F, 8.5Fr, 10.2 Ch, .035 in, 2,7 mm, 25 cm, 21 G
          </p>
        </div>
        <div id="converted" role="status">
          {text.trim() !== "" && <Converted text={text} />}
        </div>
      </div>
    </section>
  );
}

function Converted({ text }: { readonly text: string }): ReactNode {
  const read = readAnySize(text);
  if (!read.ok) return <p className={styles.problem}>{refusalSentence(read.refusal)}</p>;
  const doubt = convertedDoubt(read.value);
  const about = read.value.isAbout ? "about " : "";
  return (
    <>
      {doubt !== null && <p className={styles.doubt}>{doubt}</p>}
      <dl className={styles.units}>
        {convertedRows(read.value).map(({ word, says, note }) => (
          <div key={word}>
            <dt>{word}</dt>
            <dd>
              <b>{about + says}</b> {note !== "" && <span>{note}</span>}
            </dd>
          </div>
        ))}
      </dl>
    </>
  );
}
