import { describe, expect, it } from "vitest";
import type { Findings } from "#shared/clinical/findings-schema.ts";
import { confirmed, unknownFact } from "#shared/tube/certainty.ts";
import type { TubeKind } from "#shared/tube/kind/kinds.ts";
import { alarmInput } from "#tests/factories/alarm-input.ts";
import { figure } from "#tests/factories/criterion.ts";
import { at } from "#tests/factories/reading.ts";
import * as make from "#tests/support/factories.ts";
import { alarmReasons } from "./alarm-reasons.ts";

type Asked = NonNullable<Parameters<typeof alarmInput>[1]>;

const reasonsOf = (entries: readonly make.Entry[], more: Asked = {}) =>
  alarmReasons(alarmInput([], { entries, ...more }));
const signs = (entries: readonly make.Entry[], more?: Asked) =>
  reasonsOf(entries, more).map(({ args }) => args.signs);

/** Capped on Mon 2 Nov 2026 at 12:00. */
const placed = make.placed({ on: "2026-10-01" });
const capped = make.capped({ on: "2026-11-02", at: "12:00", id: "cap" });
const found = (on: string, findings: Findings, time?: string) =>
  make.clinicalStateNoted({ on, ...(time !== undefined && { at: time }), findings, id: `on-${on}` });
const hot: Findings = { temperature: figure(38.4) };

describe("a capped trial with pain, fever, jaundice or leak (red flag of the example table, CP)", () => {
  it("is one reason an entry, of the same day, with what holds until somebody is reached", () => {
    const findings = { ...hot, chills: confirmed(true), pain: figure(4), jaundice: confirmed(true) };
    expect(reasonsOf([placed, capped, found("2026-11-03", findings, "09:00")])).toEqual([
      {
        key: "found-while-shut:fever+chills+pain+jaundice:on-2026-11-03",
        code: "found-while-shut",
        level: "same day",
        untilReached: "reconnect to bag",
        on: "2026-11-03",
        at: at("2026-11-03T09:00Z"),
        readings: [],
        eventId: "on-2026-11-03",
        args: {
          day: "2026-11-03",
          signs: "fever, chills, pain, jaundice",
          celsius: 38.4,
          pain: 4,
          row: "capped trial with pain, fever, jaundice or leak",
        },
        source: "CP",
      },
    ]);
  });

  it.each<[string, Findings, readonly string[]]>([
    ["37.99 °C", { temperature: figure(37.99) }, []],
    ["38.0 °C, the row's", { temperature: figure(38) }, ["fever"]],
    ["38.01 °C", { temperature: figure(38.01) }, ["fever"]],
    [
      "about 38 °C",
      { temperature: { certainty: "estimated", value: { value: 38, asTyped: null } } },
      ["fever"],
    ],
    ["shaking chills", { chills: confirmed(true) }, ["chills"]],
    ["pain 0", { pain: figure(0) }, []],
    ["pain 1", { pain: figure(1) }, ["pain"]],
    ["jaundice", { jaundice: confirmed(true) }, ["jaundice"]],
    ["very unwell", { feels: confirmed("very unwell") }, ["very unwell"]],
    ["unwell", { feels: confirmed("unwell") }, []],
    ["nothing known", { temperature: unknownFact, chills: unknownFact, jaundice: unknownFact }, []],
    ["no jaundice, no chills", { jaundice: confirmed(false), chills: confirmed(false) }, []],
    ["a bilirubin, which has no row", { bilirubin: figure(90) }, []],
  ])("%s: %j", (_name, findings, expected) => {
    expect(signs([placed, capped, found("2026-11-03", findings)])).toEqual(expected);
  });

  it.each([
    ["before it was capped", "11:59", []],
    ["with the cap", "12:00", ["fever"]],
    ["after it", "12:01", ["fever"]],
    ["that day, at no known hour, put down after the cap", undefined, ["fever"]],
  ])("a fever found %s", (_name, time, expected) => {
    expect(signs([placed, capped, found("2026-11-02", hot, time)])).toEqual(expected);
  });

  it("a clamp trial is such a trial, and so is a tube that was capped when it was taken over", () => {
    const trial = make.trialStarted({ on: "2026-11-02" });
    expect(signs([placed, trial, found("2026-11-03", hot)])).toEqual(["fever"]);
    const takenOver = make.takenOver({ on: "2026-11-01", mode: "capped" });
    expect(signs([takenOver, found("2026-11-03", hot)])).toEqual(["fever"]);
  });

  it.each<[TubeKind, readonly string[]]>([
    ["nephrostomy", ["fever"]],
    ["nephroureteral catheter", ["fever"]],
    ["internal-external biliary drain", ["fever"]],
    ["abscess drain", ["fever"]],
    ["chest tube", ["fever"]],
    ["venting gastrostomy", ["fever"]],
    ["tunnelled pleural catheter", []],
    ["balloon gastrostomy", []],
  ])("%s, which is shut on trial or between uses: %j", (kind, expected) => {
    const entries = [make.placed({ kind, on: "2026-10-01", side: "left" }), capped];
    expect(signs([...entries, found("2026-11-03", hot)])).toEqual(expected);
  });

  it("speaks when a sign comes up, and again once it was gone", () => {
    const entries = [
      placed,
      capped,
      found("2026-11-03", hot),
      found("2026-11-04", { ...hot, chills: confirmed(true) }),
      found("2026-11-05", { temperature: figure(36.8), chills: unknownFact }),
      found("2026-11-06", { ...hot, chills: confirmed(true) }),
    ];
    expect(signs(entries)).toEqual(["fever", "chills", "fever"]);
  });

  it("neither a normal temperature nor an open tube answers it: a person does", () => {
    const uncapped = make.uncapped({ on: "2026-11-03", at: "18:00" });
    const entries = [placed, capped, found("2026-11-03", hot, "09:00"), uncapped];
    expect(signs(entries)).toEqual(["fever"]);
    expect(signs([...entries, found("2026-11-04", { temperature: figure(36.8) })])).toEqual(["fever"]);
    const answered = [{ key: "found-while-shut:fever:on-2026-11-03", until: at("2026-11-03T09:00Z") }];
    expect(signs(entries, { answered })).toEqual([]);
  });

  it("what is found while it is open is not of the cap; capped again, a fever that goes on speaks anew", () => {
    const uncapped = make.uncapped({ on: "2026-11-03", at: "18:00" });
    const entries = [placed, capped, found("2026-11-03", hot, "09:00"), uncapped, found("2026-11-04", hot)];
    const again = [...entries, make.capped({ on: "2026-11-05" }), found("2026-11-06", hot)];
    const keys = reasonsOf(again).map(({ key }) => key);
    expect(keys).toEqual(["found-while-shut:fever:on-2026-11-03", "found-while-shut:fever:on-2026-11-06"]);
  });

  it("an entry that is put right says something else, and one that is voided nothing", () => {
    const entries = [placed, capped, found("2026-11-03", hot)];
    const right = found("2026-11-03", { temperature: figure(36.9) });
    expect(signs([...entries, make.amended("on-2026-11-03", right)])).toEqual([]);
    expect(signs([...entries, make.voided("on-2026-11-03")])).toEqual([]);
    const worse = found("2026-11-03", { ...hot, jaundice: confirmed(true) });
    const answered = [{ key: "found-while-shut:fever:on-2026-11-03", until: null }];
    expect(signs([...entries, make.amended("on-2026-11-03", worse)], { answered })).toEqual([
      "fever, jaundice",
    ]);
  });

  it("tells the figure of a sign that came up, and of no other", () => {
    const told = (findings: Findings) =>
      reasonsOf([placed, capped, found("2026-11-03", findings)]).map(({ key, args }) => [
        key,
        args.celsius,
        args.pain,
      ]);
    const cool = { temperature: figure(36.8), jaundice: confirmed(true), pain: figure(3) };
    expect(told(cool)).toEqual([["found-while-shut:pain+jaundice:on-2026-11-03", null, 3]]);
    expect(told({ ...hot, feels: confirmed("very unwell") })).toEqual([
      ["found-while-shut:fever+very-unwell:on-2026-11-03", 38.4, null],
    ]);
  });

  it("a tube that has come out is not borne or not", () => {
    const out = make.fellOut({ on: "2026-11-03" });
    expect(signs([placed, capped, out, found("2026-11-04", hot)])).toEqual([]);
  });

  it("without the row it says nothing; without a row for fever a temperature says nothing", () => {
    const entries = [placed, capped, found("2026-11-03", { ...hot, jaundice: confirmed(true) })];
    const { protocol } = alarmInput([]);
    expect(signs(entries, { protocol: { ...protocol, redFlags: [] } })).toEqual([]);
    expect(signs(entries, { protocol: { ...protocol, outputRows: null } })).toEqual(["jaundice"]);
    const noFever = { ...protocol.outputRows!, fever: null };
    expect(signs(entries, { protocol: { ...protocol, outputRows: noFever } })).toEqual(["jaundice"]);
  });
});
