import type { TubePage } from "#app/tubes/tube-page.ts";

const plain = (cavity: string | null): string => (cavity ?? "").trim().toLowerCase();

/** The patient's other tubes that name the same cavity and are not yet done with. */
export const sameCavity = ({ tube, others }: Pick<TubePage, "tube" | "others">): TubePage["others"] =>
  plain(tube.cavity) === ""
    ? []
    : others.filter(({ cavity, status }) => plain(cavity) === plain(tube.cavity) && status !== "ended");
