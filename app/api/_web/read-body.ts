import type { RefusalCode } from "#shared/errors/codes.ts";
import { DomainError } from "#shared/errors/refusal.ts";

const KIB = 1024;

/** The body as bytes. Throws `body-too-long`, or what is said of a file in its place, as soon as more than the limit has come, whatever its header promised. */
export async function readBytes(
  request: Request,
  limitKib: number,
  code: RefusalCode = "body-too-long",
): Promise<Buffer> {
  const tooLong = new DomainError({
    code,
    args: { limit: limitKib < 1024 ? `${limitKib} KB` : `${limitKib / 1024} MB` },
  });
  if (Number(request.headers.get("content-length") ?? 0) > limitKib * KIB) throw tooLong;
  const chunks: Uint8Array[] = [];
  let length = 0;
  for await (const chunk of request.body ?? []) {
    length += chunk.byteLength;
    if (length > limitKib * KIB) throw tooLong;
    chunks.push(chunk);
  }
  return Buffer.concat(chunks);
}

/** The body as text. */
export const readBody = async (request: Request, limitKib: number): Promise<string> =>
  (await readBytes(request, limitKib)).toString("utf8");
