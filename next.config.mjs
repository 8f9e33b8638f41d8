/**
 * Headers of every answer. The policy for pages carries a nonce and is made in proxy.ts, which leaves out /api: a proxy
 * in front of it would cut long bodies silently, so the API guards its own and answers under this closed policy.
 */
const everywhere = [
  { key: "X-Content-Type-Options", value: "nosniff" },
  { key: "X-Frame-Options", value: "DENY" },
  // Not "no-referrer": a form sent under it carries the origin "null", and the origin check would refuse it.
  { key: "Referrer-Policy", value: "same-origin" },
  { key: "Cross-Origin-Opener-Policy", value: "same-origin" },
  { key: "Cross-Origin-Resource-Policy", value: "same-origin" },
  { key: "Strict-Transport-Security", value: "max-age=31536000" },
  {
    key: "Permissions-Policy",
    value: "camera=(), display-capture=(), geolocation=(), microphone=(), payment=(), usb=()",
  },
];

const api = [
  { key: "Content-Security-Policy", value: "default-src 'none'; frame-ancestors 'none'; form-action 'none'" },
  { key: "Cache-Control", value: "no-store" },
];

/** @type {import("next").NextConfig} */
export default {
  output: "standalone",
  outputFileTracingRoot: import.meta.dirname,
  turbopack: { root: import.meta.dirname },
  serverExternalPackages: ["better-sqlite3", "@node-rs/argon2", "pino"],
  poweredByHeader: false,
  agentRules: false,
  devIndicators: false,
  // The types stage of `npm test` checks every file; a second check here would only make the demo start later.
  typescript: { ignoreBuildErrors: true },
  headers: async () => [
    { source: "/:path*", headers: everywhere },
    { source: "/api/:path*", headers: api },
  ],
};
