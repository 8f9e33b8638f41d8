"use client";

import { useEffect } from "react";
import { keys } from "#app/ui/keys/keys.ts";

const isTyping = (target: EventTarget | null): boolean =>
  target instanceof HTMLElement && target.closest("input, select, textarea, dialog") !== null;

/** What a key does on this page. Several pages give one key a link of their own: the one that is here counts. */
function actOf(pressed: string, typing: boolean): (() => void) | undefined {
  const meant = keys.filter(({ key, whileTyping = false }) => key === pressed && (whileTyping || !typing));
  for (const { to, field, link } of meant) {
    if (to !== undefined) return () => location.assign(to);
    const found = document.getElementById(field ?? link ?? "");
    if (found !== null) return () => (link === undefined ? found.focus() : found.click());
  }
  return undefined;
}

function onKey(event: KeyboardEvent): void {
  if (event.ctrlKey || event.metaKey || event.altKey) return;
  const act = actOf(event.key, isTyping(event.target));
  if (act === undefined) return;
  event.preventDefault();
  act();
}

/** The keys that work anywhere, except while something is typed. */
export function KeyListener(): null {
  useEffect(() => {
    document.addEventListener("keydown", onKey);
    return () => document.removeEventListener("keydown", onKey);
  }, []);
  return null;
}
