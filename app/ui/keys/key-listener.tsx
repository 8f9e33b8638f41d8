"use client";

import { useEffect } from "react";
import { keys } from "#app/ui/keys/keys.ts";

const isTyping = (target: EventTarget | null): boolean =>
  target instanceof HTMLElement && target.closest("input, select, textarea, dialog") !== null;

function onKey(event: KeyboardEvent): void {
  if (event.ctrlKey || event.metaKey || event.altKey || isTyping(event.target)) return;
  const pressed = keys.find(({ key }) => key === event.key);
  if (pressed?.to === undefined && pressed?.field === undefined) return;
  event.preventDefault();
  if (pressed.to === undefined) document.getElementById(pressed.field ?? "")?.focus();
  else location.assign(pressed.to);
}

/** The keys that work anywhere, except while something is typed. */
export function KeyListener(): null {
  useEffect(() => {
    document.addEventListener("keydown", onKey);
    return () => document.removeEventListener("keydown", onKey);
  }, []);
  return null;
}
