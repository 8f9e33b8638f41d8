import type { ReactNode } from "react";
import { part } from "#app/strip/strip-defs.tsx";
import styles from "./strip.module.css";

const signs: readonly { readonly word: string; readonly sign: ReactNode }[] = [
  {
    word: "began",
    sign: (
      <>
        <line x1="20" x2="44" markerStart={part.began} />
      </>
    ),
  },
  {
    word: "began before this axis",
    sign: (
      <>
        <line x1="4" x2="44" markerStart={part.beganBefore} />
      </>
    ),
  },
  {
    word: "began some time in this span",
    sign: (
      <>
        <line x1="28" x2="44" />
        <rect x="4" width="24" y="-4" height="8" rx="4" data-span="" />
      </>
    ),
  },
  { word: "began on an unknown date", sign: <line x1="0" x2="44" data-undated="" /> },
  {
    word: "something happened",
    sign: (
      <>
        <line x1="0" x2="44" />
        <use href={part.mark} x="22" />
      </>
    ),
  },
  {
    word: "earliest to target",
    sign: (
      <>
        <rect x="4" width="36" y="-6" height="12" fill={part.hatch} />
        <use href={part.target} x="40" />
      </>
    ),
  },
  {
    word: "target to latest",
    sign: (
      <>
        <use href={part.target} x="4" />
        <rect x="4" width="36" y="-6" height="12" />
        <use href={part.latest} x="40" />
      </>
    ),
  },
  {
    word: "past latest",
    sign: (
      <>
        <line x1="6" x2="44" data-late="" markerStart={part.lateFrom} />
      </>
    ),
  },
];

/** What the signs of a strip mean. */
export function StripKey(): ReactNode {
  return (
    <ul className={styles.key} aria-label="What the signs mean">
      {signs.map(({ word, sign }) => (
        <li key={word}>
          <svg className={styles.sign} aria-hidden="true">
            {sign}
          </svg>
          {word}
        </li>
      ))}
    </ul>
  );
}
