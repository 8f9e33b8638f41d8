import { existsSync, readdirSync, readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { describe, expect, it } from "vitest";

const scripts: Record<string, string> = JSON.parse(readFileSync("package.json", "utf8")).scripts;

/** Inline code and the lines of indented blocks: what a reader would type or open. */
const quoted = (text: string): string[] => [
  ...[...text.matchAll(/`([^`]+)`/g)].map(([, code = ""]) => code),
  ...text.split("\n").filter((line) => line.startsWith("    ")),
];

const commandsIn = (text: string): string[] =>
  quoted(text).flatMap((code) =>
    [...code.matchAll(/npm (?:run )?([a-z][a-z:-]*)/g)].map(([, name = ""]) => name),
  );

/** Stands for a file of the reader's own. */
const PLACEHOLDER = /^[A-Z]+\.json$/;

/** A path of this repository: it begins with one of its rooms, or it is a file at the top. Links start at the text's own folder. */
function pathsIn(file: string, text: string): string[] {
  const rooms = readdirSync(".", { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map(({ name }) => name);
  const links = [...text.matchAll(/\]\(([^)#]+)\)/g)].map(([, target = ""]) => join(dirname(file), target));
  const words = quoted(text).flatMap((code) => code.split(/[\s,]+/));
  const named = words.filter(
    (word) =>
      !PLACEHOLDER.test(word) &&
      (rooms.some((room) => word.startsWith(`${room}/`)) || /^[\w-]+\.(md|json|mjs)$/.test(word)),
  );
  return [...new Set([...links, ...named])];
}

const guides = readdirSync("docs")
  .filter((name) => name.endsWith(".md"))
  .map((name) => `docs/${name}`);

describe.each(["README.md", "DEVELOPERS.md", ...guides])("%s", (file) => {
  const text = readFileSync(file, "utf8");

  it("names commands that exist", () => {
    const named = commandsIn(text);
    expect(named.length).toBeGreaterThan(0);
    expect(named.filter((name) => !(name in scripts))).toEqual([]);
  });

  it("names paths that exist", () => {
    const named = pathsIn(file, text);
    expect(named.length).toBeGreaterThan(0);
    expect(named.filter((path) => !existsSync(path))).toEqual([]);
  });
});

describe("DEVELOPERS.md", () => {
  it("names every room of shared/", () => {
    const text = readFileSync("DEVELOPERS.md", "utf8");
    const rooms = readdirSync("shared").map((room) => `shared/${room}/`);
    expect(rooms.filter((room) => !text.includes(room))).toEqual([]);
  });
});
