import { copyFileSync, mkdtempSync, rmSync } from "node:fs";
import { createServer } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { answering, startServer } from "#server/commands/serve.mjs";
import { templateFile } from "#tests/e2e/support/template.ts";

export type ClinicServer = {
  readonly origin: string;
  readonly database: string;
  readonly stop: () => Promise<void>;
};

const host = "127.0.0.1";

/** A port of this machine that nothing listens on. */
export function freePort(): Promise<number> {
  const probe = createServer();
  return new Promise((resolve, reject) => {
    probe.once("error", reject);
    probe.listen({ host, port: 0 }, () => {
      const address = probe.address();
      const port = typeof address === "object" && address !== null ? address.port : 0;
      probe.close(() => resolve(port));
    });
  });
}

/** The standalone build, serving a copy of the seeded clinic of its own. */
export async function serveClinic(): Promise<ClinicServer> {
  const folder = mkdtempSync(join(tmpdir(), "dwellbook-"));
  const database = join(folder, "clinic.sqlite");
  copyFileSync(templateFile, database);
  const port = await freePort();
  const server = startServer({ host, port, database }, "ignore");
  await answering({ host, port }, server);
  const stop = async (): Promise<void> => {
    const ended = new Promise((resolve) => server.once("exit", resolve));
    server.kill("SIGTERM");
    await ended;
    rmSync(folder, { recursive: true });
  };
  return { origin: `http://${host}:${port}`, database, stop };
}
