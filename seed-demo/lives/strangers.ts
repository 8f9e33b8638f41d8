import type { Draw } from "#seed-demo/seeded.ts";
import { person } from "#seed-demo/story.ts";
import { addDays, type Day } from "#shared/day/day.ts";
import type { Texts } from "#shared/record/field-spec.ts";

const beginnings = [
  "Dapple",
  "Fiddle",
  "Thimble",
  "Wobble",
  "Crumple",
  "Bobbin",
  "Pocket",
  "Muffin",
  "Noodle",
  "Parasol",
  "Quibble",
  "Treacle",
  "Whistle",
  "Button",
  "Custard",
  "Velvet",
] as const;
const endings = ["snood", "thrum", "latch", "ferrule", "gudgeon", "wimple", "trivet", "sprocket"] as const;
const givenNames = [
  "Ambrose",
  "Beatrix",
  "Cedric",
  "Dulcie",
  "Edmund",
  "Felicity",
  "Godfrey",
  "Harriet",
  "Isidore",
  "Josephine",
  "Kenelm",
  "Leonora",
  "Magnus",
  "Nerissa",
  "Orlando",
  "Prudence",
  "Quentin",
  "Rosalind",
  "Sebastian",
  "Theodora",
] as const;
const times = ["mornings", "evenings", "after 5 pm", "not before noon"] as const;
const languages = ["Welsh", "Portuguese", "Polish", "Urdu"] as const;

const services = ["urology", "surgery", "hepatology", "urology", "oncology", ""];

const ADULT_DAYS = 22 * 366;
const OLD_DAYS = 92 * 365;

function shuffled<T>(list: readonly T[], draw: Draw): T[] {
  const left = [...list];
  const out: T[] = [];
  while (left.length > 0) out.push(...left.splice(draw.between(0, left.length - 1), 1));
  return out;
}

/** Telephones that no story has yet, of the numbers kept for fiction. */
function freeTelephones(taken: readonly Texts[]): string[] {
  const all = Array.from({ length: 99 }, (_, index) => `555 01${String(index + 1).padStart(2, "0")}`);
  const used = taken.flatMap((patient) => Object.values(patient)).join("\n");
  return all.filter((number) => !used.includes(number));
}

type Asked = { readonly count: number; readonly startDay: Day; readonly taken: readonly Texts[] };

/**
 * So many invented patients, all grown up on the start day, no two with the same name, number or telephone. When the numbers run out
 * the last ones have none, as some people do.
 */
export function strangers(draw: Draw, { count, startDay, taken }: Asked): readonly Texts[] {
  const families = beginnings.flatMap((beginning) => endings.map((ending) => beginning + ending));
  const telephones = freeTelephones(taken);
  return shuffled(families, draw)
    .slice(0, count)
    .map((familyName, index) => {
      const telephone = telephones[index] ?? "";
      const spoken = {
        language: draw.from(languages),
        needsInterpreter: draw.from(["yes", "no", "?"] as const),
      };
      return person(familyName, draw.from(givenNames), {
        number: `00${4801 + index}`,
        birthOn: addDays(startDay, -draw.between(ADULT_DAYS, OLD_DAYS)),
        telephones: draw.percent(30) && telephone !== "" ? `${telephone} ${draw.from(times)}` : telephone,
        ...(draw.percent(12) && spoken),
        // By turns and not by chance: of every six patients one has no service named.
        responsibleService: services[index % services.length] ?? "",
      });
    });
}
