export type Unit = "us" | "ms" | "s" | "MB" | "KB" | "a second";

/** What is asked of a figure: against its floor, or by itself in its own unit. */
export type Aim =
  | { readonly kind: "at most, of the floor"; readonly times: number }
  | { readonly kind: "at least, of the floor"; readonly times: number }
  | { readonly kind: "at most"; readonly value: number };

/** One line of the table. The floor is the same thing with what is ours taken away, measured in the same run. */
export type Figure = {
  readonly what: string;
  readonly value: number;
  readonly unit: Unit;
  readonly floor: { readonly is: string; readonly value: number } | null;
  readonly aim: Aim | null;
};

export type Verdict = "met" | "missed" | "no aim";

export function verdictOf({ value, floor, aim }: Figure): Verdict {
  if (aim === null) return "no aim";
  const against = aim.kind === "at most" ? aim.value : aim.times * (floor?.value ?? Number.NaN);
  const met = aim.kind === "at least, of the floor" ? value >= against : value <= against;
  return met ? "met" : "missed";
}
