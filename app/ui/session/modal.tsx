"use client";

import { type ReactNode, useEffect, useRef } from "react";
import styles from "./session.module.css";

type ModalProps = {
  readonly heading: string;
  /** The page behind is hidden: nobody is signed in to see it. */
  readonly hidesPage?: boolean;
  /** Escape. Without it the dialog stays until it is answered. */
  readonly onCancel?: () => void;
  readonly children: ReactNode;
};

/** A dialog over the page, which keeps what was typed beneath it. */
export function Modal({ heading, hidesPage = false, onCancel, children }: ModalProps): ReactNode {
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => {
    const shown = dialog.current;
    shown?.showModal();
    return () => shown?.close();
  }, []);
  return (
    <dialog
      ref={dialog}
      className={hidesPage ? styles.cover : styles.dialog}
      aria-labelledby="modal-heading"
      onCancel={(event) => {
        event.preventDefault();
        onCancel?.();
      }}
      onKeyDown={(event) => event.stopPropagation()}
    >
      <h2 id="modal-heading">{heading}</h2>
      {children}
    </dialog>
  );
}
