import type { ReactNode } from "react";
import type { Query } from "#app/lists/filter-address.ts";
import type { DiaryUnit } from "#shared/words/diary-sheet.ts";
import styles from "./tube.module.css";

const units = [
  { inAddress: "ml", unit: "mL", word: "Millilitres" },
  { inAddress: "oz", unit: "fl oz", word: "US fluid ounces" },
] as const satisfies readonly {
  readonly inAddress: string;
  readonly unit: DiaryUnit;
  readonly word: string;
}[];

/** The unit that the address asks for; millilitres where it asks for none that there is. */
export const unitInQuery = ({ units: asked }: Query): DiaryUnit =>
  units.find(({ inAddress }) => inAddress === asked)?.unit ?? "mL";

/** The sheet in one unit or the other. */
export function DiaryUnits({ unit: shown }: { readonly unit: DiaryUnit }): ReactNode {
  return (
    <nav className={styles.papers} aria-label="Units of the sheet" data-screen-only>
      {units.map(({ inAddress, unit, word }) => (
        <a key={unit} href={`?units=${inAddress}`} aria-current={unit === shown ? "true" : undefined}>
          {word}
        </a>
      ))}
    </nav>
  );
}
