import type { RefusalCode } from "#shared/errors/codes.ts";
import type { RefusalArgs } from "#shared/errors/refusal.ts";

/** What is to mend in what is typed of the clinic's own shelf. */
export const shelfRefusals = {
  "shelf-name-unknown": ({ text, names }) =>
    names === ""
      ? `Nothing of this sort is on the shelf yet, so "${text}" is not found. Add it on the page Shelf, or leave this blank.`
      : `Nothing on the shelf is called "${text}". The nearest names are: ${names}. Type one of them, or leave this blank.`,
  "shelf-name-unclear": ({ text, names }) =>
    `"${text}" is the beginning of several names: ${names}. Type more of it.`,
  "shelf-name-taken": ({ text }) =>
    `Something on the shelf is called "${text}" already. Choose another name, or change that one.`,
  "shelf-name-twice": ({ row }) =>
    `Row ${row} of this sheet has the same name. Give each type a name of its own.`,
  "shelf-column-missing": ({ label }) =>
    `No column of this sheet is called "${label}". Put that heading above the column that says it.`,
  "shelf-column-twice": ({ label }) =>
    `Two columns of this sheet are read as "${label}". Give one of them another heading.`,
  "shelf-type-unknown": () => "This is not on the shelf any more. Open the shelf again.",
  "shelf-full": ({ limit }) => `A shelf holds at most ${limit} types. Take off what is used no more.`,
  "shelf-changed-since": ({ names }) =>
    `Somebody changed this on the shelf since: ${names}. Look at it, and change it on its own.`,
  "nothing-for-shelf": () =>
    "Nothing of this sheet changes the shelf: what can be read is here already, and any other row is set aside until it is mended.",
  "inside-wider-than-outside": ({ place, inside, outside }) =>
    `The inside (${place} ${inside}) is wider than the outside (${outside}): check both.`,
  "wire-has-no-inside": () => "A wire is solid: leave this blank, or choose another sort.",
  "kinds-of-no-tube": () => "Only a tube has a kind: leave this blank, or choose the sort tube.",
} satisfies Partial<Record<RefusalCode, (args: RefusalArgs) => string>>;
