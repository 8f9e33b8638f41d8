import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import { describe, expect, it } from "vitest";
import { clientAddress, stampPeerAddress } from "#server/sign-in/client-address.ts";

const from = (peer: string | null, forwarded: string | null): Headers => {
  const headers = new Headers();
  if (peer !== null) headers.set("x-peer-address", peer);
  if (forwarded !== null) headers.set("x-forwarded-for", forwarded);
  return headers;
};

const proxy = "10.0.0.1";

describe("the client's address", () => {
  it.each([
    ["no proxy named: the connection's own", "192.0.2.7", null, [], "192.0.2.7"],
    ["no proxy named: what a client claims is nothing", "192.0.2.7", "203.0.113.9", [], "192.0.2.7"],
    ["not from the named proxy: the claim is nothing", "192.0.2.7", "203.0.113.9", [proxy], "192.0.2.7"],
    ["from the named proxy: the last address", proxy, "203.0.113.9", [proxy], "203.0.113.9"],
    [
      "a client's claim before the proxy's own entry",
      proxy,
      "198.51.100.1, 203.0.113.9",
      [proxy],
      "203.0.113.9",
    ],
    ["two proxies in a row", proxy, "203.0.113.9, 10.0.0.2", [proxy, "10.0.0.2"], "203.0.113.9"],
    ["IPv4 over IPv6", proxy, "::ffff:203.0.113.9", [proxy], "203.0.113.9"],
    ["the proxy says nothing", proxy, null, [proxy], proxy],
    ["no stamp", null, "203.0.113.9", [proxy], "unknown"],
  ])("%s", (_, peer, forwarded, trusted, address) => {
    expect(clientAddress(from(peer, forwarded), trusted)).toBe(address);
  });

  it("is stamped by the server over what a client sends", async () => {
    stampPeerAddress();
    const server = createServer((request, response) => response.end(request.headers["x-peer-address"]));
    await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
    const { port } = server.address() as AddressInfo;
    const answer = await fetch(`http://127.0.0.1:${port}/`, { headers: { "x-peer-address": "203.0.113.9" } });
    expect(await answer.text()).toBe("127.0.0.1");
    await new Promise((resolve) => server.close(resolve));
  });
});
