import autocannon from "autocannon";
import type { Figure } from "#tests/bench/figure.ts";
import { percentile } from "#tests/bench/sample.ts";
import { cookieOf, serveBuilt } from "#tests/bench/served.ts";

const CONNECTIONS = 10;
const WARM_SECONDS = 3;
const SECONDS = 5;
const ROUNDS = 3;

type Load = { readonly perSecond: number; readonly answersMs: readonly number[] };

/** Ten connections ask for one page as fast as it comes. Throws when an answer was anything but the page. */
async function load(url: string, cookie: string, duration: number): Promise<Load> {
  const answersMs: number[] = [];
  const running = autocannon({ url, connections: CONNECTIONS, duration, headers: { cookie } });
  running.on("response", (_client, _status, _bytes, ms: number) => answersMs.push(ms));
  const { requests, non2xx, errors } = await running;
  if (non2xx + errors > 0) throw new Error(`${url} failed ${non2xx + errors} times`);
  return { perSecond: requests.average, answersMs };
}

const mean = (loads: readonly Load[]): number =>
  loads.reduce((sum, { perSecond }) => sum + perSecond, 0) / loads.length;

/** Exchanges over HTTP, and the same table with constant rows from the same server, by turns. */
export async function exchangesPageFigures(database: string): Promise<readonly Figure[]> {
  const cookie = cookieOf(database, "nurse");
  await using server = await serveBuilt(database);
  const page = (path: string, seconds: number) => load(`${server.origin}${path}`, cookie, seconds);
  const ours: Load[] = [];
  const constant: Load[] = [];
  await page("/exchanges", WARM_SECONDS);
  await page("/bench/constant-exchanges", WARM_SECONDS);
  for (let round = 0; round < ROUNDS; round += 1) {
    ours.push(await page("/exchanges", SECONDS));
    constant.push(await page("/bench/constant-exchanges", SECONDS));
  }
  const p95 = (loads: readonly Load[]) =>
    percentile(
      loads.flatMap(({ answersMs }) => answersMs),
      95,
    );
  const is = "the same table with constant rows, same server";
  const what = `Exchanges, ${CONNECTIONS} connections`;
  return [
    {
      what: `${what}, pages`,
      value: mean(ours),
      unit: "a second",
      floor: { is, value: mean(constant) },
      aim: { kind: "at least, of the floor", times: 0.7 },
    },
    {
      what: `${what}, p95`,
      value: p95(ours),
      unit: "ms",
      floor: { is, value: p95(constant) },
      aim: { kind: "at most", value: 150 },
    },
  ];
}
