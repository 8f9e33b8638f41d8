import { readFileSync } from "node:fs";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import type { Database } from "#db/sqlite.ts";
import { root } from "#server/commands/root.mjs";
import type { Figure } from "#tests/bench/figure.ts";
import { cookieOf, pageText, serveBuilt } from "#tests/bench/served.ts";

/** Aims in KB gzip beyond an empty page. */
const READING_KB = 15;
const RECORDING_KB = 90;

type Ids = { readonly tube: string; readonly patient: string };

const readingPages = ({ tube, patient }: Ids): readonly string[] => [
  "/",
  "/exchanges",
  "/patients",
  `/patients/${patient}`,
  `/tubes/${tube}`,
  `/tubes/${tube}/output`,
  "/protocol",
  "/staff",
  "/audit",
  "/keys",
];

const recordingPages = ({ tube, patient }: Ids): readonly string[] => [
  "/patients/new",
  `/patients/${patient}/record/placed`,
  `/tubes/${tube}/record/exchanged`,
  `/tubes/${tube}/record/exchange-planned`,
  `/tubes/${tube}/record/reading`,
];

/** Every script that a page names, in its tags or in what it hands to the browser's side of the framework. Old browsers' own is left out. */
function scriptsIn(html: string): ReadonlySet<string> {
  const forAll = html.replace(/<script[^>]*nomodule[^>]*>/gi, "");
  return new Set([...forAll.matchAll(/static\/chunks\/[\w~.-]+\.js/g)].map(([path]) => path));
}

const gzipKb = (path: string): number => gzipSync(readFileSync(join(root, ".next", path))).length / 1000;

const sum = (paths: Iterable<string>): number => [...paths].reduce((all, path) => all + gzipKb(path), 0);

const withoutIds = (path: string, { tube, patient }: Ids): string =>
  path.replace(tube, "...").replace(patient, "...");

/** Gzip bytes of the scripts of each screen, beyond those of an empty page of the same build. */
export async function pageScriptFigures(database: string, db: Database): Promise<readonly Figure[]> {
  const ids = db.sqlite
    .prepare<[], Ids>(
      "select id as tube, patient_id as patient from tubes where kind = 'nephrostomy' and status = 'in'",
    )
    .get();
  if (ids === undefined) throw new Error("no nephrostomy is in");
  const cookie = cookieOf(database, "lead");
  await using server = await serveBuilt(database);
  const scriptsOf = async (path: string) => scriptsIn(await pageText(`${server.origin}${path}`, cookie));
  const empty = await scriptsOf("/bench/empty");
  const floor = { is: "all of an empty page", value: sum(empty) };
  const figure = async (path: string, aim: number): Promise<Figure> => ({
    what: `script of ${withoutIds(path, ids)}`,
    value: sum([...(await scriptsOf(path))].filter((script) => !empty.has(script))),
    unit: "KB",
    floor,
    aim: { kind: "at most", value: aim },
  });
  const figures: Figure[] = [];
  for (const path of readingPages(ids)) figures.push(await figure(path, READING_KB));
  for (const path of recordingPages(ids)) figures.push(await figure(path, RECORDING_KB));
  return figures;
}
