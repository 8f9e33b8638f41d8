/** For whoever watches the server: it runs and answers. Says nothing about what it holds. */
export function GET(): Response {
  return Response.json({ status: "up" });
}

export const dynamic = "force-dynamic";
