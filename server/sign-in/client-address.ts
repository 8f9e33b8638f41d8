import { subscribe } from "node:diagnostics_channel";
import type { IncomingMessage } from "node:http";
import type { Socket } from "node:net";

/** Holds what the connection itself says. Set on every request by `stampPeerAddress`, over whatever a client sent. */
const PEER = "x-peer-address";

/** An IPv4 address that came over an IPv6 socket is the same address. */
const plain = (address: string): string => address.trim().replace(/^::ffff:(?=\d+\.)/, "");

/**
 * The framework hides the socket from its handlers, and believes a client's own `x-forwarded-for`. This writes the address of
 * the connection into each request before anything else sees it. Called once, when the server starts.
 */
export function stampPeerAddress(): void {
  subscribe("http.server.request.start", (message) => {
    const { request, socket } = message as { request: IncomingMessage; socket: Socket };
    request.headers[PEER] = plain(socket.remoteAddress ?? "");
  });
}

/**
 * Where a request comes from: the connection's own address, or, when that is one of the named proxies, the last address in
 * `x-forwarded-for` that is not. Without a stamp all are one, "unknown": that refuses sooner, never later.
 */
export function clientAddress(headers: Headers, trustedProxies: readonly string[]): string {
  const peer = headers.get(PEER);
  if (peer === null || peer === "") return "unknown";
  if (!trustedProxies.includes(peer)) return peer;
  const forwarded = (headers.get("x-forwarded-for") ?? "").split(",").map(plain);
  return forwarded.findLast((address) => address !== "" && !trustedProxies.includes(address)) ?? peer;
}
