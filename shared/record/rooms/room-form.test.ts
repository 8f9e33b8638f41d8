import { describe, expect, it } from "vitest";
import { readField, type Texts } from "#shared/record/field-spec.ts";
import { roomForm } from "#shared/record/rooms/room-form.ts";
import { refusalSentence } from "#shared/words/refusals.ts";
import { room } from "#tests/factories/visit.ts";

const beside = { rooms: [room(), room({ id: "room-2", name: "Room 2" })], changes: null };

const read = (texts: Texts, context: Parameters<typeof roomForm.read>[1] = beside) =>
  roomForm.read(
    { name: "Room 3", can: "fluoro, ct", hours: "mon-thu 8-16:30, fri 8-12", reserve: "1 h", ...texts },
    context,
  );

function sentences(result: ReturnType<typeof read>): readonly string[] {
  return result.ok ? [] : result.refusals.map((one) => `${one.field}: ${refusalSentence(one)}`);
}

describe("a room", () => {
  it("is read with its abilities in the order of the list, whatever the order of typing", () => {
    const result = read({ can: "sedation, us, fluoro, ultrasound" });
    expect(result).toMatchObject({
      ok: true,
      entry: { name: "Room 3", can: ["fluoroscopy", "ultrasound", "sedation"], reserve: 60 },
    });
  });

  it("may do none of the list and keep nothing free; both are said", () => {
    expect(read({ can: "", reserve: "" })).toMatchObject({ ok: true, entry: { can: [], reserve: 0 } });
    const { can, reserve } = roomForm.fields(beside);
    expect(readField(can, "")).toEqual({ echo: "only what needs none of the list" });
    expect(readField(reserve, "none")).toEqual({ echo: "nothing" });
    expect(readField(reserve, "1:30")).toEqual({ echo: "90 minutes of each day" });
  });

  it("without a name, with an unknown ability, without hours and a strange reserve: each beside its field", () => {
    expect(sentences(read({ name: " ", can: "laser", hours: "", reserve: "some" }))).toEqual([
      "name: Type the name of the room.",
      'can: "laser" is not one of: fluoroscopy, ultrasound, CT, sedation, anesthesia, isolation.',
      "hours: Type when the room is staffed, like mon-fri 8-16.",
      'reserve: "some" is not understood as a length of time in whole minutes. Type it like 60, or 1 h 30.',
    ]);
  });

  it("is called as no other; one that is changed may keep its name", () => {
    const said = "name: Another room is called Room 2 already. Type another name, or change that room.";
    expect(sentences(read({ name: " room  2 " }))).toEqual([said]);
    const [first, second] = beside.rooms;
    expect(sentences(read({ name: "room 2" }, { ...beside, changes: first ?? null }))).toEqual([said]);
    expect(read({ name: "ROOM 2" }, { ...beside, changes: second ?? null })).toMatchObject({ ok: true });
  });

  it("keeps free at most its shortest day", () => {
    expect(sentences(read({ hours: "mon-thu 8-16, fri 8-10, 11-13", reserve: "241" }))).toEqual([
      "reserve: 241 minutes are more than the room has on Friday, its shortest day: 240. Type 240 or less, or longer hours.",
    ]);
    expect(read({ hours: "mon-thu 8-16, fri 8-10, 11-13", reserve: "4 h" })).toMatchObject({ ok: true });
  });

  it("opens with what stands, which reads as the same room", () => {
    const stands = room({ can: ["CT", "sedation"], reserve: 45 });
    const context = { rooms: [stands], changes: stands };
    const { id: _id, ...entry } = stands;
    expect(roomForm.read({}, context)).toEqual({ ok: true, entry });
    expect(roomForm.fields(context).hours.initial).toBe("mon-fri 8-16");
  });
});

describe("a length of time", () => {
  it.each([
    ["60", 60],
    ["90 min", 90],
    ["1 h", 60],
    ["1 h 30", 90],
    ["1h30m", 90],
    ["1.5 h", 90],
    ["1,25 hours", 75],
    ["0", 0],
  ])("%s is %i minutes", (typed, reserve) => {
    expect(read({ reserve: typed })).toMatchObject({ ok: true, entry: { reserve } });
  });

  it.each(["-5", "1.5", "1.51 h", "an hour", "1:75"])("%s is asked again", (typed) => {
    expect(sentences(read({ reserve: typed }))).toEqual([
      `reserve: "${typed}" is not understood as a length of time in whole minutes. Type it like 60, or 1 h 30.`,
    ]);
  });
});
