"use client";

import { useEffect } from "react";
import { keys } from "#app/ui/keys/keys.ts";

const isTyping = (target: EventTarget | null): boolean =>
  target instanceof HTMLElement && target.closest("input, select, textarea, dialog") !== null;

function onKey(event: KeyboardEvent): void {
  if (event.ctrlKey || event.metaKey || event.altKey || isTyping(event.target)) return;
  const to = keys.find(({ key }) => key === event.key)?.to;
  if (to === undefined) return;
  event.preventDefault();
  location.assign(to);
}

/** The keys that work anywhere, except while something is typed. */
export function KeyListener(): null {
  useEffect(() => {
    document.addEventListener("keydown", onKey);
    return () => document.removeEventListener("keydown", onKey);
  }, []);
  return null;
}
