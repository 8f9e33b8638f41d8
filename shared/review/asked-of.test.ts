import { describe, expect, it } from "vitest";
import type { TubeKind } from "#shared/tube/kind/kinds.ts";
import type { Role } from "#shared/tube/vocabulary.ts";
import { clinicalAskedOf } from "./asked-of.ts";

const ofAll = ["temperature", "chills", "feels", "pain", "antibioticsUntil", "imaging"];
const infection = ["whiteCells", "crp", "culture"];
const salts = ["sodium", "potassium"];
const organ = [...ofAll, ...infection, "creatinine", "bilirubin", ...salts, "voidedVolume"];

describe("what of the clinical state is asked for in review (common practice, no source)", () => {
  it.each<[TubeKind, Role, readonly string[]]>([
    ["abscess drain", "collection", [...ofAll, ...infection]],
    ["nephrostomy", "drains an organ", organ],
    ["external biliary drain", "drains an organ", [...organ, "jaundice"]],
    ["cholecystostomy", "drains an organ", [...organ, "jaundice"]],
    ["chest tube", "air and fluid", [...ofAll, "coughOrBreathlessness", ...infection]],
    ["tunnelled pleural catheter", "intermittent", [...ofAll, "coughOrBreathlessness"]],
    ["ureteral stent", "internal", [...ofAll, "creatinine", "bilirubin"]],
    ["balloon gastrostomy", "feeding", ofAll],
    ["venting gastrostomy", "venting", [...ofAll, ...salts]],
    ["cecostomy", "irrigation access", ofAll],
  ])("of a %s that is for %s", (kind, role, expected) => {
    expect(clinicalAskedOf({ kind, role })).toEqual(expected);
  });
});
