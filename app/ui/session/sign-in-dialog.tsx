"use client";

import { type ReactNode, useState } from "react";
import { Modal } from "#app/ui/session/modal.tsx";
import styles from "./session.module.css";

type SignInDialogProps = { readonly userName: string; readonly onSignedIn: () => void };

/** Null when signed in, else what to mend. */
async function trySignIn(typed: FormData): Promise<string | null> {
  try {
    const answer = await fetch("/api/sign-in", {
      method: "POST",
      headers: { accept: "application/json" },
      body: new URLSearchParams([...typed].map(([name, value]) => [name, String(value)])),
    });
    const { sentence } = (await answer.json()) as { readonly sentence: string | null };
    return sentence;
  } catch {
    return "No answer came from the server. Try again.";
  }
}

/** Over the page, for the same person only: what stands beneath was typed by them. */
export function SignInDialog({ userName, onSignedIn }: SignInDialogProps): ReactNode {
  const [problem, setProblem] = useState<string | null>(null);
  const [sending, setSending] = useState(false);

  const submit = async (form: HTMLFormElement): Promise<void> => {
    if (sending) return;
    setSending(true);
    const sentence = await trySignIn(new FormData(form));
    setSending(false);
    if (sentence === null) onSignedIn();
    else setProblem(sentence);
  };

  return (
    <Modal heading="Your sign-in has ended" hidesPage>
      <p>
        Nothing typed is lost. Sign in again as <strong>{userName}</strong> to go on where you were.
      </p>
      <form
        onSubmit={(event) => {
          event.preventDefault();
          void submit(event.currentTarget);
        }}
      >
        <input name="userName" autoComplete="username" value={userName} readOnly hidden />
        <label className={styles.field}>
          Password
          <input
            name="password"
            type="password"
            autoComplete="current-password"
            required
            aria-invalid={problem !== null}
            aria-describedby="sign-in-problem"
          />
        </label>
        <p className={styles.problem} id="sign-in-problem" role="alert">
          {problem}
        </p>
        <div className={styles.acts}>
          <button type="submit" aria-disabled={sending}>
            Sign in
          </button>
          <a href="/sign-in">Sign in as someone else; what is typed here goes</a>
        </div>
      </form>
    </Modal>
  );
}
