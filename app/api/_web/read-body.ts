import { DomainError } from "#shared/errors/refusal.ts";

const KIB = 1024;

/** The body as text. Throws `body-too-long` as soon as more than the limit has come, whatever its header promised. */
export async function readBody(request: Request, limitKib: number): Promise<string> {
  const tooLong = new DomainError({ code: "body-too-long", args: { limit: `${limitKib} KB` } });
  if (Number(request.headers.get("content-length") ?? 0) > limitKib * KIB) throw tooLong;
  const chunks: Uint8Array[] = [];
  let length = 0;
  for await (const chunk of request.body ?? []) {
    length += chunk.byteLength;
    if (length > limitKib * KIB) throw tooLong;
    chunks.push(chunk);
  }
  return Buffer.concat(chunks).toString("utf8");
}
