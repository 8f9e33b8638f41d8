/** The part of the load generator that the bench uses; it brings no types of its own. */
declare module "autocannon" {
  import type { EventEmitter } from "node:events";

  type Options = {
    readonly url: string;
    readonly connections: number;
    /** Seconds. */
    readonly duration: number;
    readonly headers: Readonly<Record<string, string>>;
  };
  type Result = {
    readonly requests: { readonly average: number };
    readonly non2xx: number;
    readonly errors: number;
  };
  /** Emits `response` with client, status, bytes and milliseconds; resolves when the time is over. */
  export default function autocannon(options: Options): EventEmitter & PromiseLike<Result>;
}
