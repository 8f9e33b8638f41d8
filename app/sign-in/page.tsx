import type { Metadata } from "next";
import { cookies, headers } from "next/headers";
import type { ReactNode } from "react";
import { clinicName } from "#app/_trpc/clinic-name.ts";
import { SAID_COOKIE, type Said } from "#app/api/_web/said-cookie.ts";
import { ErrorSummary } from "#app/ui/error-summary.tsx";
import { PlainPage } from "#app/ui/plain-page.tsx";
import styles from "./sign-in.module.css";

export const metadata: Metadata = { title: "Sign in - Dwellbook" };

type SignInPageProps = {
  readonly searchParams: Promise<Readonly<Record<string, string | string[] | undefined>>>;
};

/** Where the browser keeps the cookie: https, or this very machine. */
async function cookieHolds(): Promise<boolean> {
  const given = await headers();
  const host = (given.get("host") ?? "").replace(/:\d+$/, "");
  const https = given.get("x-forwarded-proto")?.split(",")[0]?.trim() === "https";
  return https || host === "localhost" || host === "127.0.0.1" || host === "[::1]";
}

async function said(): Promise<Said | null> {
  const value = (await cookies()).get(SAID_COOKIE)?.value;
  if (value === undefined) return null;
  try {
    const { sentence, userName } = JSON.parse(value) as Record<string, unknown>;
    return { sentence: String(sentence), userName: String(userName) };
  } catch {
    return null;
  }
}

/** A plain form: works without script. */
export default async function SignInPage({ searchParams }: SignInPageProps): Promise<ReactNode> {
  if (!(await cookieHolds())) return <HttpsNeeded />;
  const { next } = await searchParams;
  const refused = await said();
  return (
    <PlainPage heading="Who is signing in?" clinic={clinicName()}>
      {refused !== null && <ErrorSummary problems={[{ field: "userName", sentence: refused.sentence }]} />}
      <form className={styles.form} method="post" action="/api/sign-in">
        <input type="hidden" name="next" value={typeof next === "string" ? next : "/"} />
        <label className={styles.label} htmlFor="field-userName">
          User name
        </label>
        <input
          className={styles.input}
          id="field-userName"
          name="userName"
          autoComplete="username"
          autoCapitalize="none"
          spellCheck={false}
          required
          defaultValue={refused?.userName}
          aria-invalid={refused !== null}
        />
        <label className={styles.label} htmlFor="field-password">
          Password
        </label>
        <input
          className={styles.input}
          id="field-password"
          name="password"
          type="password"
          autoComplete="current-password"
          required
          aria-invalid={refused !== null}
        />
        <button className={styles.send} type="submit">
          Sign in
        </button>
      </form>
      <p className={styles.note}>
        Accounts are made by whoever runs this server. Sign out when you leave: this book holds what patients
        told the clinic.
      </p>
    </PlainPage>
  );
}

function HttpsNeeded(): ReactNode {
  return (
    <PlainPage heading="This address needs https">
      <p>
        You opened Dwellbook over plain http from another machine, where passwords and patients could be read
        on the way. The browser keeps no sign-in here.
      </p>
      <p>Open it with https, or on the machine that serves it with http://127.0.0.1.</p>
    </PlainPage>
  );
}
