import {
  dropProtocolDraft,
  type ProtocolDraftRow,
  protocolDraftRow,
  setProtocolDraft,
} from "#db/queries/protocol-draft.ts";
import { allStaff } from "#db/queries/staff.ts";
import { newestVersions } from "#db/queries/versions.ts";
import type { Database } from "#db/sqlite.ts";
import { inAct } from "#server/act.ts";
import { protocolOf } from "#server/record/books.ts";
import type { Doing } from "#server/record/record-event.ts";
import { DomainError } from "#shared/errors/refusal.ts";
import { liftProtocol } from "#shared/protocol/lift-protocol.ts";
import { type Protocol, protocolSchema } from "#shared/protocol/protocol.ts";

/** The clinic's newest version, which a draft is held against. Throws `no-pins`. */
export function standingProtocol(db: Database): Protocol {
  const versions = newestVersions(db);
  if (versions === null) throw new DomainError({ code: "no-pins" });
  return protocolOf(db, versions.protocol);
}

export type ProtocolDraft = {
  /** One more with each change. */
  readonly revision: number;
  /** The version that it was begun from. */
  readonly base: number;
  /** Its rows as the next version, which nobody has approved. */
  readonly protocol: Protocol;
  readonly note: string;
  /** Ids of staff, in the order in which they first changed it. */
  readonly authors: readonly string[];
};

function read(db: Database, { rows, revision, base, note, authors }: ProtocolDraftRow): ProtocolDraft {
  const version = standingProtocol(db).version + 1;
  const protocol = protocolSchema.parse({ ...(liftProtocol(rows) as object), version, approved: null });
  return { revision, base, protocol, note, authors };
}

/** The draft that nobody has signed yet; null where there is none. */
export function openDraft(db: Database): ProtocolDraft | null {
  const row = protocolDraftRow(db);
  return row === undefined ? null : read(db, row);
}

/** The draft as somebody saw it. Throws `draft-missing`, `draft-changed`. */
export function draftSeen(db: Database, revision: number): ProtocolDraft {
  const draft = openDraft(db);
  if (draft === null) throw new DomainError({ code: "draft-missing" });
  if (draft.revision !== revision) throw new DomainError({ code: "draft-changed" });
  return draft;
}

/** Who changed the draft, by name; what differs from what stands is read off both tables. */
export function viewDraft(db: Database) {
  const draft = openDraft(db);
  const stands = standingProtocol(db);
  if (draft === null) return { stands, draft: null };
  const names = new Map(allStaff(db).map(({ id, fullName }) => [id, fullName]));
  const authors = draft.authors.flatMap((id) => names.get(id) ?? []);
  return { stands, draft: { ...draft, authors } };
}

/** One change of the draft; the same act sent again changes nothing more. */
export type DraftChange = {
  readonly actId: string;
  /** The revision that was seen; 0 where there was no draft, and the change begins one. */
  readonly revision: number;
  /** What the act is kept as. */
  readonly input: unknown;
  /** The draft's table, or the one that stands, as it is to be from now on. Throws DomainError with what to mend. */
  readonly change: (protocol: Protocol) => Protocol;
  /** Why, in the author's words; left as it is where undefined. */
  readonly note?: string;
};

/** Changes the draft, or begins one. Throws `draft-changed` where somebody else changed, signed or dropped it meanwhile. */
export function changeDraft({ db, staff }: Doing, asked: DraftChange): { revision: number } {
  const { actId, revision, input, change, note } = asked;
  return inAct({ db, staff, actId, command: "protocol: draft", input }, (tx, at) => {
    const draft = openDraft(tx);
    if ((draft?.revision ?? 0) !== revision) throw new DomainError({ code: "draft-changed" });
    const stands = draft?.protocol ?? standingProtocol(tx);
    const { version: _version, approved: _approved, ...rows } = change(stands);
    const authors = [...new Set([...(draft?.authors ?? []), staff.id])];
    const next = revision + 1;
    setProtocolDraft(tx, {
      base: draft?.base ?? stands.version,
      revision: next,
      rows,
      note: note ?? draft?.note ?? "",
      authors,
      updatedAt: at,
    });
    return { revision: next };
  });
}

/** Drops the draft as it was seen. What stands is untouched. */
export function dropDraft({ db, staff }: Doing, input: { actId: string; revision: number }): null {
  return inAct({ db, staff, actId: input.actId, command: "protocol: drop the draft", input }, (tx) => {
    draftSeen(tx, input.revision);
    dropProtocolDraft(tx);
    return null;
  });
}
