import type { Metadata, Viewport } from "next";
import { headers } from "next/headers";
import type { ReactNode } from "react";
import "./look/layers.css";
import "./look/tokens.css";
import "./look/ground.css";
import "./look/print.css";
// Every page carries the plain page for what fails; its sheets, fetched ahead and then not used, would be complained of.
import "./ui/book-name.module.css";
import "./ui/plain-page.module.css";

export const metadata: Metadata = { title: "Dwellbook", robots: { index: false, follow: false } };

export const viewport: Viewport = {
  width: "device-width",
  initialScale: 1,
  themeColor: [
    { media: "(prefers-color-scheme: light)", color: "#fbfaf5" },
    { media: "(prefers-color-scheme: dark)", color: "#16181a" },
  ],
};

/** Reading the request's headers makes every page dynamic: a page made ahead of time could carry no nonce. */
export default async function RootLayout({ children }: { readonly children: ReactNode }): Promise<ReactNode> {
  await headers();
  return (
    <html lang="en-US">
      <body>{children}</body>
    </html>
  );
}
