/** Runs once, before the server answers. */
export async function register(): Promise<void> {
  if (process.env.NEXT_RUNTIME !== "nodejs") return;
  const { stampPeerAddress } = await import("#server/sign-in/client-address.ts");
  stampPeerAddress();
}
