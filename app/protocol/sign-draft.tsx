"use client";

import { type FormEvent, type ReactNode, useState } from "react";
import { api } from "#app/_trpc/client.ts";
import { Field } from "#app/ui/field.tsx";
import { NoticeLine } from "#app/ui/notice-line.tsx";
import { newActId } from "#app/ui/recording/act-id.ts";
import { sendAct } from "#app/ui/recording/send-act.ts";
import { unsavedSentence } from "#app/ui/recording/unsaved-sentence.ts";

type Signed = Awaited<ReturnType<typeof api.protocol.sign.mutate>>;

type SignDraftProps = { readonly revision: number; readonly userName: string };

/** An approver signs what the page showed, with their own password; it is kept nowhere. */
export function SignDraft({ revision, userName }: SignDraftProps): ReactNode {
  const [actId] = useState(newActId);
  const [password, setPassword] = useState("");
  const [sending, setSending] = useState(false);
  const [signed, setSigned] = useState<Signed | null>(null);
  const [problem, setProblem] = useState<string | undefined>(undefined);

  const press = async (event: FormEvent): Promise<void> => {
    event.preventDefault();
    setSending(true);
    const sent = await sendAct(() => api.protocol.sign.mutate({ actId, revision, password }));
    setSending(false);
    if (sent.kind !== "saved")
      return setProblem(
        unsavedSentence(sent, "No answer came from the server. Sign again: it is done only once."),
      );
    // Drawn anew, the page would say that there is no draft, and not what came of it.
    setPassword("");
    setSigned(sent.result);
  };

  if (signed !== null) return <SignedNotice signed={signed} />;
  return (
    <form onSubmit={(event) => void press(event)}>
      <input type="text" name="user" autoComplete="username" value={userName} readOnly hidden />
      <Field
        name="password"
        label="Your password, to sign"
        hint="what you sign is the draft as it stands on this page"
        problem={problem}
        control={{
          type: "password",
          autoComplete: "current-password",
          value: password,
          onChange: ({ target }: { target: { value: string } }) => setPassword(target.value),
        }}
      />
      <button type="submit" disabled={sending || password === ""}>
        Sign the draft
      </button>
    </form>
  );
}

export function SignedNotice({ signed }: { readonly signed: Signed }): ReactNode {
  const { version, by, alone, tubes } = signed;
  return (
    <NoticeLine>
      <span>
        Version {version} is approved by {by}
        {alone ? ", who had changed the draft too, being the only approver" : ""}. Clocks that start from now
        on go by it.{" "}
        {tubes === 0
          ? "No date that stands would be another."
          : `New dates are proposed for ${tubes} ${tubes === 1 ? "tube" : "tubes"}; the old ones stand.`}
      </span>
      {tubes > 0 && <a href="/dates">Look at the proposed dates</a>}
      <a href="/protocol">To the protocol</a>
    </NoticeLine>
  );
}
