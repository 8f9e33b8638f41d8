import { type Parsed, parsed } from "#shared/errors/refusal.ts";
import type { CoaxialSort } from "#shared/fit/coaxial.ts";
import { factWords } from "#shared/record/field/fact-words.ts";
import type { FieldWords } from "#shared/record/field/field-words.ts";
import type { FieldSpec } from "#shared/record/field-spec.ts";
import { readOutside } from "#shared/shelf/outside.ts";
import type { Length } from "#shared/size/length.ts";
import { printBoth, printLength } from "#shared/size/print-length.ts";
import { readLength } from "#shared/size/read-length.ts";
import type { Fact } from "#shared/tube/certainty.ts";

/** A size that can be read only once another field has said of what sort of thing it is. */
export type BySort = (sort: CoaxialSort) => Parsed<Fact<Length>>;

/** One sort for each way in which a size is read, the likest first. */
const waysToRead = ["tube", "wire", "needle"] as const satisfies readonly CoaxialSort[];

type Reading = { readonly sort: CoaxialSort; readonly read: Parsed<Fact<Length>> };

/** What every way of reading says, or the first that understands it. A unit that does not fit says less than a number that does not. */
function readOneWay(of: BySort): Reading {
  const ways = waysToRead.map((sort): Reading => ({ sort, read: of(sort) }));
  const [first, ...others] = [
    ...ways.filter(({ read }) => read.ok),
    ...ways.filter(({ read }) => !read.ok && read.refusal.code !== "length-unit-unfit"),
    ...ways,
  ];
  if (first === undefined) throw new RangeError(`no way to read ${others.length} ways`);
  return first;
}

type Reader = (text: string, sort: CoaxialSort) => Parsed<Fact<Length>>;
type Printer = (length: Length, sort: CoaxialSort) => string;

const bySortField = (words: FieldWords, read: Reader, print: Printer): FieldSpec<BySort> => ({
  ...words,
  read: (text) => {
    const of: BySort = (sort) => read(text, sort);
    const one = readOneWay(of).read;
    return one.ok ? parsed(of) : one;
  },
  echo: (of) => {
    const { sort, read: one } = readOneWay(of);
    return one.ok ? factWords(one.value, (length) => print(length, sort)) : "";
  },
});

/** The outside: a tube's in French, a wire's in inches, a needle's by its gauge or as measured. */
export const outsideField = (words: FieldWords): FieldSpec<BySort> =>
  bySortField(words, readOutside, (length, sort) =>
    sort === "tube" ? printBoth(length, "F", "mm") : printBoth(length, "in", "mm"),
  );

/** The whole length; a bare number is centimetres. Blank is unknown. */
export const wholeLengthField = (words: FieldWords): FieldSpec<BySort> =>
  bySortField(
    words,
    (text, sort) => {
      if (text.trim() === "") return parsed({ certainty: "unknown" });
      return readLength(text, { thing: sort === "wire" ? "wire length" : "tube length", bare: "cm" });
    },
    (length) => printLength(length, "cm"),
  );
