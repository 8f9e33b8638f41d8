import type { Database } from "#db/sqlite.ts";
import type { CallStory } from "#shared/call/call-line.ts";
import type { Day } from "#shared/day/day.ts";
import type { Instant, Zone } from "#shared/day/instant.ts";
import type { DayPart } from "#shared/protocol/call-rows.ts";
import type { Why } from "#shared/step/step.ts";
import type { StepKind } from "#shared/tube/step-kinds.ts";

/** What a clock shows now: in which zone, null the clinic's own, the minute of its day, and in which part of the clinic's rows that lies. */
export type ClockNow = { readonly zone: Zone | null; readonly minute: number; readonly part: DayPart | null };

/** When the list is looked at: the day and `HH:MM` by the clinic's clock, and every clock that a patient on the list has. Nothing of it is stored. */
export type CallNow = { readonly today: Day; readonly time: string; readonly clocks: readonly ClockNow[] };
export type Rows = { readonly limit: number; readonly skip: number };

/**
 * The list's order, the same for the same day and minute: a red flag that nobody has; trials and first hours; past latest; fewest attempts
 * left; whose asked time has come, whoever asked for none now, whoever asked for later; whose best time it is by their own clock, of whom none is
 * known, whose it is not; who needs no interpreter; the longest due; the id.
 * First of the index alone, whose rows are short; of patients one pass, which costs less than to look each of them up.
 */
const ORDER = `with clock as (
    select value ->> 'zone' as zone, value ->> 'minute' as minute, value ->> 'part' as part from json_each(:clocks)
  )
  select line.patient_id
  from call_lines line left join clock on clock.zone is line.lives_in
  where line.due_on <= :today
  order by line.flag_pending desc,
    line.in_trial = 1 or ifnull(line.first_hours_until >= :today, 0) desc,
    ifnull(line.latest_on < :today, 0) desc,
    line.attempts_left,
    case
      when line.next_time is not null and (line.due_on < :today or line.next_time <= :time) then 0
      when line.next_time is null and (line.next_part is null or line.due_on < :today or line.next_part = clock.part) then 1
      else 2
    end,
    case
      when line.best = '[]' or line.next_time is not null then 1
      when exists (
        select 1 from json_each(line.best) where value ->> 'from' <= clock.minute and clock.minute < value ->> 'to'
      ) then 0
      else 2
    end,
    line.patient_id in (select id from patients where needs_interpreter = 1),
    line.due_on,
    line.patient_id
  limit :limit offset :skip`;

/** Whom somebody rings on a day, by id, in the order in which they are rung. */
export const callOrder = ({ sqlite }: Database, { clocks, ...asked }: CallNow & Rows): readonly string[] =>
  sqlite
    .prepare<[object], string>(ORDER)
    .pluck()
    .all({ ...asked, clocks: JSON.stringify(clocks) });

/** In which zones other than the clinic's patients on the list live. */
export const zonesOnList = ({ sqlite }: Database): readonly Zone[] =>
  sqlite
    .prepare<[], Zone>("select distinct lives_in from call_lines where lives_in is not null order by 1")
    .pluck()
    .all();

type Span = { readonly after: Day; readonly to: Day };

const COMING = `select patient_id from call_lines where due_on > :after and due_on <= :to
  order by due_on, flag_pending desc, in_trial desc, patient_id limit :limit offset :skip`;

/** Who comes up in a span of days behind a day, the first day first. */
export const comingOrder = ({ sqlite }: Database, asked: Span & Rows): readonly string[] =>
  sqlite.prepare<[typeof asked], string>(COMING).pluck().all(asked);

const COUNT = "select count(*) from call_lines where due_on > :after and due_on <= :to";

export const countCalls = ({ sqlite }: Database, span: Span): number =>
  sqlite.prepare<[Span], number>(COUNT).pluck().get(span) ?? 0;

type Stored = {
  readonly patientId: string;
  readonly dueOn: Day;
  readonly flagPending: number;
  readonly inTrial: number;
  readonly firstHoursUntil: Day | null;
  readonly latestOn: Day | null;
  readonly attemptsLeft: number;
  readonly nextTime: string | null;
  readonly nextPart: DayPart | null;
  readonly livesIn: Zone | null;
  readonly line: string;
  readonly familyName: string;
  readonly givenName: string;
  readonly birthOn: Day | null;
  readonly number: string | null;
  readonly language: string;
  readonly needsInterpreter: number | null;
  readonly contact: string;
  readonly holder: string | null;
};

const LINES = `select line.patient_id as patientId, line.due_on as dueOn, line.flag_pending as flagPending, line.in_trial as inTrial,
    line.first_hours_until as firstHoursUntil, line.latest_on as latestOn, line.attempts_left as attemptsLeft,
    line.next_time as nextTime, line.next_part as nextPart, line.lives_in as livesIn, line.line,
    patients.family_name as familyName, patients.given_name as givenName, patients.birth_on as birthOn,
    patient_identifiers.value as number, patients.language, patients.needs_interpreter as needsInterpreter, patients.contact,
    staff.full_name as holder
  from call_lines line
  join patients on patients.id = line.patient_id
  left join patient_identifiers on patient_identifiers.patient_id = line.patient_id and patient_identifiers.place = 1
  left join call_holds on call_holds.patient_id = line.patient_id and call_holds.since_at > :after
  left join staff on staff.id = call_holds.staff_id
  where line.patient_id in (select value from json_each(:ids))`;

export type CallRow = Omit<Stored, "flagPending" | "inTrial" | "needsInterpreter" | "line" | "contact"> & {
  readonly flagPending: boolean;
  readonly inTrial: boolean;
  readonly needsInterpreter: boolean | null;
  readonly story: CallStory;
  readonly contact: unknown;
};

type OfPatients = { readonly ids: readonly string[]; readonly after: Instant };

/** Lines of these patients in the order of the ids, each with who holds the call since after a moment of the machine's clock. */
export function callRows({ sqlite }: Database, { ids, after }: OfPatients): readonly CallRow[] {
  const rows = sqlite
    .prepare<[object], Stored>(LINES)
    .all({ ids: JSON.stringify(ids), after })
    .map(
      ({ flagPending, inTrial, needsInterpreter, line, contact, ...row }): CallRow => ({
        ...row,
        flagPending: flagPending === 1,
        inTrial: inTrial === 1,
        needsInterpreter: needsInterpreter === null ? null : needsInterpreter === 1,
        story: JSON.parse(line) as CallStory,
        contact: JSON.parse(contact),
      }),
    );
  const byId = new Map(rows.map((row) => [row.patientId, row]));
  return ids.flatMap((id) => byId.get(id) ?? []);
}

export type RingingStep = {
  readonly id: string;
  readonly patientId: string;
  readonly kind: StepKind;
  readonly dueOn: Day;
  readonly tube: string | null;
  readonly why: readonly Why[];
};

const STEPS = `select open_steps.id, open_steps.patient_id as patientId, open_steps.kind, open_steps.due_on as dueOn, tubes.name as tube,
    open_steps.why
  from open_steps left join tubes on tubes.id = open_steps.tube_id
  where open_steps.patient_id in (select value from json_each(:ids))
    and open_steps.kind in (select value from json_each(:kinds))
  order by open_steps.patient_id, open_steps.rank, open_steps.due_on, open_steps.id`;

type StoredStep = Omit<RingingStep, "why"> & { readonly why: string };

/** What these patients are rung about, the most urgent first. */
export const stepsRungAbout = (
  { sqlite }: Database,
  asked: { readonly ids: readonly string[]; readonly kinds: readonly StepKind[] },
): readonly RingingStep[] =>
  sqlite
    .prepare<[object], StoredStep>(STEPS)
    .all({ ids: JSON.stringify(asked.ids), kinds: JSON.stringify(asked.kinds) })
    .map((row) => ({ ...row, why: JSON.parse(row.why) as readonly Why[] }));

/** A trial that runs, whose, and who covers it. */
export type RunningTrial = CallStory["trials"][number] & { readonly familyName: string };

const TRIALS = `select line.line, patients.family_name as familyName
  from call_lines line join patients on patients.id = line.patient_id
  where line.in_trial = 1 order by patients.family_name, line.patient_id`;

type TrialRow = { readonly line: string; readonly familyName: string };

/** Every trial that runs, by the name of whose it is. */
export const runningTrials = ({ sqlite }: Database): readonly RunningTrial[] =>
  sqlite
    .prepare<[], TrialRow>(TRIALS)
    .all()
    .flatMap(({ line, familyName }) =>
      (JSON.parse(line) as CallStory).trials.map((trial) => ({ ...trial, familyName })),
    );
