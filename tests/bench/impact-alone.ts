import { openDatabase } from "#db/connection.ts";
import { impactFigures } from "#tests/bench/impact.ts";

const [file = ""] = process.argv.slice(2);
const db = openDatabase(file);
const figures = impactFigures(db);
db.sqlite.close();
process.stdout.write(JSON.stringify(figures));
