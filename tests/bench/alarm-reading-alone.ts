import { openDatabase } from "#db/connection.ts";
import { alarmReadingFigure } from "#tests/bench/alarm-reading.ts";

const [file = ""] = process.argv.slice(2);
const db = openDatabase(file);
const figure = alarmReadingFigure(file, db);
db.sqlite.close();
process.stdout.write(JSON.stringify(figure));
