import { type FigureSpan, figureSpans } from "#shared/call/figures.ts";

/** The span that an address asks for; 90 days where it asks for none that is offered. */
export const daysAsked = (text: string | undefined): FigureSpan =>
  figureSpans.find((span) => String(span) === text) ?? 90;
