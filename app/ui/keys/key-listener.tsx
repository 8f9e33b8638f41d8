"use client";

import { useEffect } from "react";
import { keys } from "#app/ui/keys/keys.ts";

const isTyping = (target: EventTarget | null): boolean =>
  target instanceof HTMLElement && target.closest("input, select, textarea, dialog") !== null;

function onKey(event: KeyboardEvent): void {
  if (event.ctrlKey || event.metaKey || event.altKey || isTyping(event.target)) return;
  const pressed = keys.find(({ key }) => key === event.key);
  if (pressed === undefined) return;
  const { to, field, link } = pressed;
  if (to === undefined && field === undefined && link === undefined) return;
  event.preventDefault();
  if (to !== undefined) location.assign(to);
  else if (field !== undefined) document.getElementById(field)?.focus();
  else document.getElementById(link ?? "")?.click();
}

/** The keys that work anywhere, except while something is typed. */
export function KeyListener(): null {
  useEffect(() => {
    document.addEventListener("keydown", onKey);
    return () => document.removeEventListener("keydown", onKey);
  }, []);
  return null;
}
