import { randomBytes } from "node:crypto";
import { type APIRequestContext, expect } from "@playwright/test";

type Texts = Readonly<Record<string, string>>;

/** Addresses of a patient and of the one tube. */
export type EnteredTube = { readonly patient: string; readonly tube: string };

export type Sender = { readonly request: APIRequestContext; readonly origin: string };

const actId = (): string => randomBytes(16).toString("base64url");

let patients = 0;

/** Calls the clinic's API as a form would, with an act of its own. */
export async function send<Data>(
  { request, origin }: Sender,
  procedure: string,
  input: object,
): Promise<Data> {
  const answer = await request.post(`${origin}/api/trpc/${procedure}`, {
    data: { actId: actId(), ...input },
    headers: { origin },
  });
  expect(answer.status(), await answer.text()).toBe(200);
  const { result } = (await answer.json()) as { readonly result: { readonly data: Data } };
  return result.data;
}

/** What is typed in place of what stands there otherwise. */
export type Said = { readonly patient?: Texts; readonly tube?: Texts };

/** A patient of a test's own, with a tube of the left kidney placed twenty days ago, as the clinic's API takes it. */
export async function enterTube(sender: Sender, said: Said = {}): Promise<EnteredTube> {
  patients += 1;
  const plain = {
    familyName: "Quimbleton",
    givenName: "Ada",
    birthOn: "4 may 1959",
    number: `7000${patients}`,
  };
  const { patientId } = await send<{ patientId: string }>(sender, "patient.register", {
    texts: { ...plain, ...said.patient },
  });
  const { tubeId } = await send<{ tubeId: string }>(sender, "record.tube", {
    lastSeen: 0,
    patientId,
    texts: { kind: "pcn l", size: "8 f", when: "-20", takes: ".035 in", ...said.tube },
  });
  return { patient: `/patients/${patientId}`, tube: `/tubes/${tubeId}` };
}
