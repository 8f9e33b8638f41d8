"use client";

import { type ReactNode, useEffect, useEffectEvent, useRef, useState } from "react";
import { Modal } from "#app/ui/session/modal.tsx";
import { goOn, type SessionLeft, sessionLeft } from "#app/ui/session/session-left.ts";
import { offerSignIn } from "#app/ui/session/sign-in-again.ts";
import { SignInDialog } from "#app/ui/session/sign-in-dialog.tsx";
import styles from "./session.module.css";

type SessionWatchProps = { readonly userName: string; readonly session: SessionLeft };

type State = { readonly kind: "quiet" | "ended" } | { readonly kind: "warning"; readonly idle: boolean };

const WARNING_SECONDS = 120;
const RETRY_SECONDS = 30;

/** Warns before the session ends, lets the person go on, and asks for the password over the page once it has ended. */
export function SessionWatch({ userName, session }: SessionWatchProps): ReactNode {
  const [state, setState] = useState<State>({ kind: "quiet" });
  const timer = useRef<ReturnType<typeof setTimeout>>(undefined);
  const waiting = useRef<(() => void)[]>([]);

  const checkIn = (seconds: number): void => {
    clearTimeout(timer.current);
    timer.current = setTimeout(() => void check(), Math.max(1, seconds) * 1000);
  };

  const told = (left: SessionLeft | null): void => {
    if (left === null) {
      setState({ kind: "ended" });
      return;
    }
    const seconds = Math.min(left.idleSeconds, left.endsInSeconds);
    const idle = left.idleSeconds < left.endsInSeconds;
    const warns = seconds <= WARNING_SECONDS;
    setState(warns ? { kind: "warning", idle } : { kind: "quiet" });
    checkIn(warns ? seconds + 1 : seconds - WARNING_SECONDS);
  };

  // Another tab may have gone on, so the server is asked before anything is said.
  const check = (ask = sessionLeft): Promise<void> => ask().then(told, () => checkIn(RETRY_SECONDS));

  const signedIn = (): void => {
    setState({ kind: "quiet" });
    void check();
    for (const go of waiting.current.splice(0)) go();
  };

  const begin = useEffectEvent(() => told(session));
  const seen = useEffectEvent(() => document.visibilityState === "visible" && void check());
  useEffect(() => {
    begin();
    const onSeen = (): void => void seen();
    document.addEventListener("visibilitychange", onSeen);
    const withdraw = offerSignIn(
      () =>
        new Promise((resolve) => {
          waiting.current.push(resolve);
          setState({ kind: "ended" });
        }),
    );
    return () => {
      clearTimeout(timer.current);
      document.removeEventListener("visibilitychange", onSeen);
      withdraw();
    };
  }, []);

  if (state.kind === "ended") return <SignInDialog userName={userName} onSignedIn={signedIn} />;
  if (state.kind === "warning") {
    return (
      <Warning
        idle={state.idle}
        onGoOn={() => void check(goOn)}
        onClose={() => setState({ kind: "quiet" })}
      />
    );
  }
  return null;
}

type WarningProps = { readonly idle: boolean; readonly onGoOn: () => void; readonly onClose: () => void };

function Warning({ idle, onGoOn, onClose }: WarningProps): ReactNode {
  if (idle) {
    return (
      <Modal heading="Are you still here?" onCancel={onGoOn}>
        <p>Nothing was done for a while. In less than two minutes you are signed out; what is typed stays.</p>
        <div className={styles.acts}>
          <button type="submit" onClick={onGoOn}>
            Go on
          </button>
        </div>
      </Modal>
    );
  }
  return (
    <Modal heading="This sign-in ends soon" onCancel={onClose}>
      <p>
        In less than two minutes the longest time of one sign-in is over. You can then sign in again over this
        page; what is typed stays.
      </p>
      <div className={styles.acts}>
        <button type="submit" onClick={onClose}>
          Go on
        </button>
      </div>
    </Modal>
  );
}
