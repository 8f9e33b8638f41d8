import { describe, expect, it } from "vitest";
import { backUp } from "#db/backup.ts";
import { openDatabase } from "#db/connection.ts";
import { reads } from "#db/schema/reads.ts";
import { exportStream } from "#server/export/export-stream.ts";
import { callerAs } from "#tests/support/caller.ts";
import { people, testDatabase } from "#tests/support/database.ts";
import { testFolder } from "#tests/support/folder.ts";
import { addInventedPatient, clinicWithPatient } from "#tests/support/patient.ts";

const textOf = (stream: ReadableStream<Uint8Array>): Promise<string> => new Response(stream).text();

describe("an export that is sent", () => {
  it("tells one moment: what is written while it is read is not in it", async () => {
    using folder = testFolder();
    const file = folder.in("clinic.sqlite");
    using first = clinicWithPatient();
    await backUp(first, file);
    const db = openDatabase(file);
    for (let place = 0; place < 400; place += 1)
      addInventedPatient(db, `one-of-many-${place}`, String(10_000 + place));

    const reader = exportStream(file, "record.json").getReader();
    const { value: begun } = await reader.read();
    addInventedPatient(db, "latecomer", "9");
    let text = new TextDecoder().decode(begun);
    expect(text).not.toContain("one-of-many-399");
    for (let next = await reader.read(); !next.done; next = await reader.read())
      text += new TextDecoder().decode(next.value);
    expect(JSON.parse(text).tables.patients).toHaveLength(401);
    expect(text).not.toContain("latecomer");
    expect(await textOf(exportStream(file, "record.json"))).toContain("latecomer");
    db.sqlite.close();
  });

  it("that is broken off lets go of the database", async () => {
    using folder = testFolder();
    const file = folder.in("clinic.sqlite");
    using first = clinicWithPatient();
    await backUp(first, file);
    const reader = exportStream(file, "record.json").getReader();
    await reader.read();
    await reader.cancel();
    const db = openDatabase(file);
    // A connection that still read from the old state would leave a log that cannot be emptied.
    addInventedPatient(db, "patient-2", "000418");
    expect(db.sqlite.pragma("wal_checkpoint(TRUNCATE)")).toEqual([{ busy: 0, log: 0, checkpointed: 0 }]);
    db.sqlite.close();
  });
});

describe("taking an export", () => {
  it("is written down: who, which file, when", async () => {
    using db = testDatabase();
    expect(await callerAs(db, people.lead).export.file({ part: "entries.csv" })).toBe("entries.csv");
    expect(db.orm.select().from(reads).all()).toMatchObject([
      {
        staffId: people.lead.id,
        procedure: "export.file",
        subjectKind: "export",
        subjectId: "entries.csv",
      },
    ]);
  });
});
