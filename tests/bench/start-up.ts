import type { Figure } from "#tests/bench/figure.ts";
import { median } from "#tests/bench/sample.ts";
import { cookieOf, pageText, type Served, serveBare, serveBuilt } from "#tests/bench/served.ts";

const STARTS = 5;
const REQUESTS = 500;

async function startMs(serve: () => Promise<Served>): Promise<number> {
  const times: number[] = [];
  for (let start = 0; start < STARTS; start += 1) {
    await using server = await serve();
    times.push(server.startMs);
  }
  return median(times);
}

async function memoryAfterRequests(serve: () => Promise<Served>, cookie: string): Promise<number> {
  await using server = await serve();
  for (let asked = 0; asked < REQUESTS; asked += 1) await pageText(`${server.origin}/exchanges`, cookie);
  return await server.memory();
}

/** From the start of the process to its first good answer, and what it holds after having shown Exchanges some while. */
export async function startUpFigures(database: string): Promise<readonly Figure[]> {
  const cookie = cookieOf(database, "nurse");
  const built = () => serveBuilt(database);
  const floor = "a bare server of the same runtime";
  return [
    {
      what: "start to first answer",
      value: await startMs(built),
      unit: "ms",
      floor: { is: floor, value: await startMs(serveBare) },
      aim: null,
    },
    {
      what: `memory after ${REQUESTS} pages`,
      value: await memoryAfterRequests(built, cookie),
      unit: "MB",
      floor: { is: `${floor}, as many answers`, value: await memoryAfterRequests(serveBare, cookie) },
      aim: null,
    },
  ];
}
