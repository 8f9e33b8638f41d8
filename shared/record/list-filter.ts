import { type Parsed, parsed, type Refusal } from "#shared/errors/refusal.ts";
import { kindField, type TypedKind } from "#shared/record/field/kind-field.ts";
import { matchWord, plainWord } from "#shared/record/field/match-word.ts";
import { kindOf, type TubeKind } from "#shared/tube/kind/kinds.ts";
import { type OwnerRole, ownerRoles } from "#shared/tube/step-kinds.ts";
import type { Role, Side } from "#shared/tube/vocabulary.ts";
import { roleNames } from "#shared/words/roles.ts";
import { sideWords } from "#shared/words/sides.ts";
import { roleWords } from "#shared/words/tube-roles.ts";

/** By what lists are filtered, each under its word in the address. */
export const filterNames = ["kind", "side", "role", "owner", "service", "visit"] as const;
export type FilterName = (typeof filterNames)[number];

/** Words as typed or as an address holds them; one left out or blank filters nothing. Nothing of a patient stands in them. */
export type FilterTexts = Readonly<Partial<Record<FilterName, string>>>;

/** The side of a tube, the service of a patient: nobody has said. */
export const UNKNOWN = "unknown";

/** What a list shows. Null: whatever there is. */
export type ListFilter = {
  readonly kind: TubeKind | null;
  readonly side: Side | typeof UNKNOWN | null;
  readonly role: Role | null;
  /** Who has the step today: a role, whoever of it, or one person. */
  readonly owner: { readonly role: OwnerRole } | { readonly staffId: string } | null;
  /** One service in each spelling that stands in the record. */
  readonly service: readonly string[] | typeof UNKNOWN | null;
  /** Whether the tube has a visit that is still to come: held, booked or confirmed, here or elsewhere. */
  readonly visit: "with" | "without" | null;
};

export const everything: ListFilter = {
  kind: null,
  side: null,
  role: null,
  owner: null,
  service: null,
  visit: null,
};

export const isEverything = (filter: ListFilter): boolean =>
  Object.values(filter).every((chosen) => chosen === null);

/** Who and what can be filtered by in this clinic. */
export type FilterBeside = {
  readonly people: readonly { readonly id: string; readonly userName: string; readonly fullName: string }[];
  /** As patients' contacts name them, in every spelling. */
  readonly services: readonly string[];
};

/** One choice: its word in the address, how it is shown, and what else people type for it. */
type Option<T> = {
  readonly value: T;
  readonly word: string;
  readonly label: string;
  readonly also: readonly string[];
};

const sides: readonly Option<Side | typeof UNKNOWN>[] = [
  ...sideWords.map(({ value, words }) => ({ value, word: value, label: value, also: words })),
  { value: UNKNOWN, word: UNKNOWN, label: "unknown", also: ["?"] },
];

const roles: readonly Option<Role>[] = roleWords.map(({ value, words }) => ({
  value,
  word: value,
  label: value,
  also: words,
}));

const visits: readonly Option<NonNullable<ListFilter["visit"]>>[] = [
  { value: "with", word: "with", label: "with a visit", also: ["booked", "yes"] },
  { value: "without", word: "without", label: "without a visit", also: ["not booked", "no"] },
];

const isRole = (name: string): boolean => ownerRoles.some((role) => role === name);

/** A role by its word; a person by `@user name`, which no role begins with. */
const ownersOf = (people: FilterBeside["people"]): readonly Option<NonNullable<ListFilter["owner"]>>[] => [
  ...ownerRoles.map((role) => ({ value: { role }, word: role, label: roleNames[role], also: [] })),
  ...people.map(({ id, userName, fullName }) => ({
    value: { staffId: id },
    word: `@${userName}`,
    label: fullName,
    also: isRole(userName) ? [] : [userName],
  })),
];

/** Spellings that differ in blanks, hyphens or capitals are one service, shown as the first of them. */
function servicesOf(services: readonly string[]): readonly Option<NonNullable<ListFilter["service"]>>[] {
  const spellings = new Map<string, string[]>();
  for (const service of services) {
    const known = spellings.get(plainWord(service));
    if (known === undefined) spellings.set(plainWord(service), [service]);
    else known.push(service);
  }
  const options = [...spellings.values()].map((value) => {
    const shown = (value[0] ?? "").trim();
    return { value, word: shown, label: shown, also: [] };
  });
  return [...options, { value: UNKNOWN, word: UNKNOWN, label: "none named", also: ["?"] }];
}

const optionsOf = ({ people, services }: FilterBeside) => ({
  side: sides,
  role: roles,
  owner: ownersOf(people),
  service: servicesOf(services),
  visit: visits,
});

type Shown = { readonly value: string; readonly label: string };

/** What the lists of choices offer: the word of the address, and how it is shown. The kind is typed. */
export function filterChoices(
  beside: FilterBeside,
): Readonly<Record<Exclude<FilterName, "kind">, readonly Shown[]>> {
  const { side, role, owner, service, visit } = optionsOf(beside);
  const shown = (options: readonly Option<unknown>[]): readonly Shown[] =>
    options.map(({ word, label }) => ({ value: word, label }));
  return {
    side: shown(side),
    role: shown(role),
    owner: shown(owner),
    service: shown(service),
    visit: shown(visit),
  };
}

type Chosen<T> = Option<T> | null;

function choose<T>(text: string | undefined, options: readonly Option<T>[]): Parsed<Chosen<T>> {
  if (text === undefined || text.trim() === "") return parsed(null);
  return matchWord(
    text,
    options.map((option) => ({ value: option, words: [option.label, option.word, ...option.also] })),
  );
}

const { read: readKind } = kindField({ label: "Kind" });

/** "pcn l" says the side too. */
const chooseKind = (text: string | undefined): Parsed<TypedKind | null> =>
  text === undefined || text.trim() === "" ? parsed(null) : readKind(text);

type AllChosen = {
  readonly kind: TubeKind | null;
} & { readonly [Name in Exclude<FilterName, "kind">]: Chosen<NonNullable<ListFilter[Name]>> };

/** What a filter asks for, said: "Left nephrostomy, owned by Tansy Nurseworth"; null where it asks for nothing. */
function wordsOf({ kind, side, role, owner, service, visit }: AllChosen): string | null {
  const name = kind === null ? null : kindOf(kind).name;
  const isWord = side !== null && side.value !== UNKNOWN && side.value !== "not sided";
  const words = [
    ...(name !== null && isWord ? [`${side.label} ${name}`] : [name, side && `side ${side.label}`]),
    role && `role ${role.label}`,
    owner && `owned by ${owner.label}`,
    service && `service ${service.label}`,
    visit?.label ?? null,
  ];
  const said = words.filter((word) => word !== null).join(", ");
  return said === "" ? null : said.charAt(0).toUpperCase() + said.slice(1);
}

function understood(chosen: AllChosen) {
  const { kind, side, role, owner, service, visit } = chosen;
  const filter: ListFilter = {
    kind,
    side: side?.value ?? null,
    role: role?.value ?? null,
    owner: owner?.value ?? null,
    service: service?.value ?? null,
    visit: visit?.value ?? null,
  };
  const texts: FilterTexts = {
    ...(kind && { kind: kindOf(kind).name }),
    ...(side && { side: side.word }),
    ...(role && { role: role.word }),
    ...(owner && { owner: owner.word }),
    ...(service && { service: service.word }),
    ...(visit && { visit: visit.word }),
  };
  return { filter, texts, words: wordsOf(chosen) };
}

export type FilterReading =
  | {
      readonly ok: true;
      readonly filter: ListFilter;
      /** The words that an address holds for it. */
      readonly texts: FilterTexts;
      /** What it asks for, said; null for everything. */
      readonly words: string | null;
    }
  | { readonly ok: false; readonly refusals: readonly Refusal[] };

/**
 * What a list is asked to show. A word that nobody here knows, one that means several, and two sides that differ are refused, each with
 * its field: none is passed over, since a list that shows more or less than was asked for is a wrong list.
 */
export function readFilter(texts: FilterTexts, beside: FilterBeside): FilterReading {
  const options = optionsOf(beside);
  const reads = {
    kind: chooseKind(texts.kind),
    side: choose(texts.side, options.side),
    role: choose(texts.role, options.role),
    owner: choose(texts.owner, options.owner),
    service: choose(texts.service, options.service),
    visit: choose(texts.visit, options.visit),
  };
  const { kind, side, role, owner, service, visit } = reads;
  if (!kind.ok || !side.ok || !role.ok || !owner.ok || !service.ok || !visit.ok) {
    const refusals = filterNames.flatMap((field) => {
      const read = reads[field];
      return read.ok ? [] : [{ ...read.refusal, field }];
    });
    return { ok: false, refusals };
  }
  const kindSide = kind.value?.side ?? null;
  if (kindSide !== null && side.value !== null && side.value.value !== kindSide) {
    const args = { kind: kindSide, side: side.value.label };
    return { ok: false, refusals: [{ code: "side-differs", field: "side", args }] };
  }
  const chosen: AllChosen = {
    kind: kind.value?.kind ?? null,
    side: side.value ?? sides.find(({ value }) => value === kindSide) ?? null,
    role: role.value,
    owner: owner.value,
    service: service.value,
    visit: visit.value,
  };
  return { ok: true, ...understood(chosen) };
}
