import { type FactRow, factRow } from "#app/facts/fact-list.tsx";
import { printWhen } from "#shared/day/print-day.ts";
import type { Length, LengthUnit } from "#shared/size/length.ts";
import { printBoth, printLength } from "#shared/size/print-length.ts";
import type { Fact } from "#shared/tube/certainty.ts";
import { kindOf } from "#shared/tube/kind/kinds.ts";
import type { TubeState } from "#shared/tube/state.ts";

const both = (first: LengthUnit, second: LengthUnit) => (length: Length) => printBoth(length, first, second);
const cm = (length: Length): string => printLength(length, "cm");
const asWritten = <T extends string>(value: T): string => value;
const yesNo = (value: boolean): string => (value ? "yes" : "no");

/** Lines that nobody has to fill in: left out while they are blank. */
const written = (word: string, says: string | null): FactRow[] => (says === null ? [] : [{ word, says }]);

function insides({ inside }: TubeState): FactRow[] {
  if (inside.bores.length === 0) return [{ word: "Insides, measured", says: "unknown", unknown: true }];
  return inside.bores.map(({ place, inside: bore, tolerance }) => {
    const row = factRow(`Inside of the ${place}`, bore, both("in", "mm"));
    const give = tolerance === null ? "" : ` ± ${printLength(tolerance, "mm")}`;
    return { ...row, says: `${row.says}${row.unknown ? "" : give}` };
  });
}

function tip({ tipConfirmed }: TubeState): FactRow {
  if (tipConfirmed === null) return { word: "Position of the tip", says: null };
  const print = (inPlace: boolean): string =>
    `${inPlace ? "in place" : "not in place"}, ${printWhen(tipConfirmed.when)}`;
  return factRow("Position of the tip", tipConfirmed.inPlace, print);
}

const list = (words: readonly string[]): string | null => (words.length === 0 ? null : words.join(", "));

/** What only a tube with a part outside has. */
const outsideRows = (tube: TubeState): FactRow[] => [
  factRow("External length", tube.externalLength, cm),
  factRow("Fixation at the skin", tube.fixation, asWritten),
  factRow("Flush ordered", tube.flushOrder as Fact<string>, asWritten),
  { word: "Expected fluid", says: list(tube.expectedFluid) },
];

/** Everything that is recorded of a tube, with its certainty, in the order in which it is asked. */
export function factsOfTube(tube: TubeState): readonly FactRow[] {
  const kind = kindOf(tube.kind);
  return [
    factRow("Size, outside", tube.size, both("F", "mm")),
    factRow("Takes a wire of", tube.inside.takes, (wire) => `${printBoth(wire, "in", "mm")}, by label`),
    ...insides(tube),
    factRow("End hole", tube.inside.endHole, asWritten),
    factRow("Held by", tube.retention, asWritten),
    factRow("Full length", tube.fullLength, cm),
    ...(kind.outside ? outsideRows(tube) : []),
    ...(tube.balloonMl.certainty === "unknown" && kind.retention !== "balloon"
      ? []
      : [factRow("Water in the balloon", tube.balloonMl, (ml) => `${ml} mL`)]),
    { word: "Concerns about its state", says: list(tube.concerns) ?? "none recorded" },
    tip(tube),
    { word: "Role", says: tube.role },
    { word: "Mode", says: tube.mode },
    { word: "Number", says: `${tube.number} of this patient` },
    ...written("Organ", tube.organ),
    ...written("Cavity", tube.cavity),
    ...written("Route", tube.route),
    ...written("Indication", tube.indication),
    factRow("Obstruction by cancer", tube.cancerObstruction, yesNo),
    ...written("Taken over from", tube.takenOverFrom),
  ];
}
