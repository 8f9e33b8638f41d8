import { type Aim, type Figure, type Unit, verdictOf } from "#tests/bench/figure.ts";

const amount = (value: number, unit: Unit): string => {
  const figure = value >= 100 ? value.toFixed(0) : value.toPrecision(3);
  return unit === "a second" ? `${figure} a second` : `${figure} ${unit}`;
};

function aimText(aim: Aim | null, unit: Unit): string {
  switch (aim?.kind) {
    case undefined:
      return "-";
    case "at most":
      return `at most ${aim.value} ${unit}`;
    case "at most, of the floor":
      return `at most ${aim.times} x floor`;
    case "at least, of the floor":
      return `at least ${aim.times} x floor`;
  }
}

function cellsOf(figure: Figure): readonly string[] {
  const { what, value, unit, floor, aim } = figure;
  const times = floor === null || floor.value === 0 ? "-" : `${(value / floor.value).toFixed(2)} x`;
  const floorText = floor === null ? "-" : `${amount(floor.value, unit)}: ${floor.is}`;
  return [what, amount(value, unit), times, aimText(aim, unit), verdictOf(figure), floorText];
}

const head = ["", "figure", "of floor", "aim", "", "floor"];

/** Figures under one another, a line each. */
export function figureTable(figures: readonly Figure[]): string {
  const lines = [head, ...figures.map(cellsOf)];
  const widths = head.map((_, column) => Math.max(...lines.map((cells) => cells[column]?.length ?? 0)));
  return lines
    .map((cells) =>
      cells
        .map((cell, column) => cell.padEnd(widths[column] ?? 0))
        .join("  ")
        .trimEnd(),
    )
    .join("\n");
}
