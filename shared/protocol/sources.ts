/**
 * What the numbers in a row's `source` point to. In most, the abstract was read. CP = common practice, no source; MEM = from
 * memory, not verified.
 */
export const sources: Readonly<Record<string, string>> = {
  "1": '"Is routine imaging necessary prior to percutaneous abscess catheter removal?", Abdominal Radiology 2022',
  "2": "ACR Appropriateness Criteria, radiologic management of infected fluid collections, 2014",
  "3": '"Larger abdominopelvic abscess drains...", American Journal of Surgery 2017',
  "4": '"Percutaneous cholecystostomy catheter removal and incidence of clinically significant bile leaks", AJR 2005;184:1647',
  "5": "CADTH rapid response RC0581, nephrostomy and biliary tube care",
  "6": "J Med Case Reports 2019 (external bile 200-1,600 mL a day)",
  "7": '"Routine 3-month nephrostomy exchange", J Clin Interv Radiol 2018;2:23',
  "8": '"Inadvertent discontinuation of percutaneous nephrostomy catheters", JVIR 2006, and a radiology reference text',
  "9": '"Successful capping of nephroureterostomy tubes", World J Clin Urol 2020;9:1',
  "10": "El-Faqih 1991 (encrusted 9.2 % under 6 weeks, 47.5 % at 6-12, 76.3 % over 12), as quoted",
  "11": '"Good practice guideline, balloon gastrostomy", National Nurses Nutrition Group 2016',
  "12": "Cha 2022, BMJ Open Gastroenterology 9:e000881",
  "13": '"Durability of gastrojejunostomy tubes", Dig Dis Interv 2019;3(S01)',
  "14": "Consensus guideline of the Society of Interventional Radiology, 2019 (thresholds, shown for discussion)",
  "15": "one children's programme (a loss over 0.5 mL)",
  "16": "ISO 20696:2018, 5.5.2 (outer diameter as stated, +-0.33 mm)",
  CP: "common practice, no source",
  MEM: "from memory, not verified",
};

const NAMED = /\b(?:\d+|CP|MEM)\b/g;

/** Each source that a row's `source` points to, spelled out: "5: CADTH rapid response ...". */
export const sourceLines = (source: string): readonly string[] =>
  (source.match(NAMED) ?? []).flatMap((name) =>
    sources[name] === undefined ? [] : [`${name}: ${sources[name]}`],
  );
