"use client";

import { useEffect } from "react";

const STOPS = "[data-stop]";

const stopsIn = (within: ParentNode): HTMLElement[] =>
  [...within.querySelectorAll<HTMLElement>(STOPS)].filter((stop) => stop.checkVisibility());

const isTyping = (target: EventTarget | null): boolean =>
  target instanceof HTMLElement &&
  target.closest("input, select, textarea, button, dialog, summary") !== null;

/** Up and down go from row to row, staying in the column where it has one there. */
function byRow(from: HTMLElement, step: 1 | -1): HTMLElement | undefined {
  const stops = stopsIn(document);
  const row = from.closest("tr");
  const cell = from.closest<HTMLTableCellElement>("td, th")?.cellIndex;
  const way = step === 1 ? stops : stops.toReversed();
  const ahead = way.slice(way.indexOf(from) + 1).filter((stop) => stop.closest("tr") !== row);
  const next = ahead[0]?.closest("tr");
  const inNext = ahead.filter((stop) => stop.closest("tr") === next);
  return inNext.find((stop) => stop.closest<HTMLTableCellElement>("td, th")?.cellIndex === cell) ?? inNext[0];
}

/** Left and right stay in the row. */
function inRow(from: HTMLElement, step: 1 | -1): HTMLElement | undefined {
  const stops = stopsIn(from.closest("tr") ?? document);
  return stops[stops.indexOf(from) + step];
}

function target(key: string, from: HTMLElement | null): HTMLElement | undefined {
  // Nothing has the focus yet: the first one down, and no other key is taken.
  if (from === null) return key === "ArrowDown" ? stopsIn(document)[0] : undefined;
  if (key === "ArrowDown") return byRow(from, 1);
  if (key === "ArrowUp") return byRow(from, -1);
  if (key === "ArrowRight") return inRow(from, 1);
  return key === "ArrowLeft" ? inRow(from, -1) : undefined;
}

function onKey(event: KeyboardEvent): void {
  if (event.ctrlKey || event.metaKey || event.altKey || event.shiftKey || isTyping(event.target)) return;
  const focused = document.activeElement;
  const from = focused instanceof HTMLElement ? focused.closest<HTMLElement>(STOPS) : null;
  // A link elsewhere has the focus: arrows scroll there as on any page.
  if (from === null && focused !== document.body && focused?.id !== "content") return;
  const stop = target(event.key, from);
  if (stop === undefined) return;
  event.preventDefault();
  stop.focus();
}

/** Arrow keys go from one marked link of a table to the next: visits and free times, lines of calls. */
export function StopKeys(): null {
  useEffect(() => {
    document.addEventListener("keydown", onKey);
    return () => document.removeEventListener("keydown", onKey);
  }, []);
  return null;
}
