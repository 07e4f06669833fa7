// What the server answers, by its addresses (docs/http-api.md). For the type checker; phones do not get it.
import type { Row } from './care/overlay.js';
import type { ChangeOf, Fields, Need, Portion, Reason, Suggested } from './kinds.d.ts';

/** Who this phone is to the server. */
export interface Me {
  household_id: string;
  person_id: string;
  device_id: string;
  role: 'keeper' | 'stand_in';
  name: string;
  epoch: string;
  schema: number;
  server_time: number;
  build: string;
  vapid_public_key: string;
  pass: (PassDays & { id: string }) | null;
}

/** When a pass lets in, by the household's clock. */
export interface PassDays {
  state: 'active' | 'not_yet' | 'ended';
  starts_on: string;
  ends_on: string;
}

/** The same on the phone: `ended` is the code of what ended its session. */
export type Session = Me & { ended: string | null };

/** A field where two phones met, and what became of it. */
export interface Conflict {
  field: string;
  winner: 'mine' | 'theirs';
  mine: unknown;
  theirs: unknown;
  by: string | null;
  at_ms: number;
}

/** What was stored; `made_ms`, where it was taken for another time than it said. */
export interface Applied {
  op_id: string;
  verdict: 'applied';
  rev: number;
  made_ms?: number;
  conflicts?: Conflict[];
}

/** What waits for a record that is not there yet. */
export interface Deferred {
  op_id: string;
  verdict: 'deferred';
  args: { missing: string };
}

/** What is never taken, and why. */
export interface Rejected {
  op_id: string;
  verdict: 'rejected';
  code: string;
  args?: { field?: string; reason?: string; why?: string; missing?: string; [name: string]: unknown };
}

/** What became of an operation (docs/sync.md). */
export type Verdict = Applied | Deferred | Rejected;

/** A row that went; a stand-in is not told what it held. */
export type GoneRow = Row | { id: string; kind: Row['kind']; rev: number; set?: undefined };

/** The answer of a round trip (docs/sync.md). */
export interface SyncAnswer {
  answers: Verdict[];
  rows: Row[];
  gone: GoneRow[];
  epoch: string;
  cursor: string;
  more: boolean;
  reset: boolean;
  first: boolean;
  schema: number;
  server_time: number;
  pass: PassDays | null;
  told?: Told;
}

/** What keepers should know of their server: `backup_ms` of an old backup, `words` of a household nearly full. */
export interface Told {
  code: string;
  backup_ms?: number;
  words?: string;
}

/** What this phone keeps of itself and of its last sync; what was never written is not there. */
export interface Known {
  n?: number;
  epoch?: string | null;
  cursor?: string | null;
  me?: Me;
  ended?: string | null;
  /** Whether this phone was signed out here, by whoever holds it. */
  left?: boolean;
  emptied?: boolean;
  last_sync_ms?: number;
  skew_ms?: number;
  last_made_ms?: number;
}

export interface Phone {
  id: string;
  name: string;
  here: boolean;
}

/** A phone of the household. */
export interface Device extends Phone {
  person_id: string;
  role: Me['role'];
  pass_id: string | null;
  created_ms: number;
  last_seen_ms: number;
}

/** What came of the messages to a phone. */
export interface Heard {
  last_delivered_ms: number | null;
  last_ack_ms: number | null;
  last_outcome: string | null;
}

/** A phone of somebody else that hears nothing. */
export interface SilentPhone {
  id: string;
  name: string;
  person_id: string;
  person: string | null;
  why: 'unheard' | 'unseen';
  last_ack_ms: number | null;
  seen_ms: number;
}

export interface PushHealth extends Heard {
  subscribed: boolean;
  key_id: string | null;
  devices: Array<Phone & Heard & { seen_ms: number; silent: boolean }>;
  silent_elsewhere: SilentPhone[];
}

/** What a calculator asks; `what` in the words of whoever asked. */
export interface CalculatorInput {
  name: string;
  what: string;
  unit: string;
  default: string | number | boolean | null;
  low: number | null;
  high: number | null;
  choices: string[];
  kind: 'number' | 'choice' | 'yes_no';
  left_out: string;
}

export interface Calculator {
  code: string;
  title: string;
  inputs: CalculatorInput[];
  formula: string;
  source: string;
  limits: string;
}

/** A sensor, where it speaks if that is a broker, and how it is doing. */
export interface SensorState {
  id: string;
  place_id: string;
  name: string;
  unit: 'C' | 'F';
  broker: string | null;
  topic: string | null;
  temperature_path: string | null;
  humidity_path: string | null;
  heard_ms: number | null;
  away_ms: number | null;
  broken_ms: number | null;
  broken_word: string | null;
}

/** What a file of readings holds. */
export interface ReadFile {
  rows: number;
  hours: number;
  new_hours: number;
  from_ms: number | null;
  until_ms: number | null;
  low_c: number | null;
  high_c: number | null;
  bad_rows: number;
  bad: Array<{ line: number; why: string }>;
}

/** What feedings since its amount was written down leave of a lot. */
export interface Left {
  lot_id: string;
  amount: number;
  given: number;
}

export interface Spoiling {
  lot_id: string;
  food_code: string;
  on: string;
  amount: number;
}

export interface Outlook {
  food_code: string;
  runs_out_early: string | null;
  runs_out: string | null;
  buy_by: string | null;
  spoils: Spoiling[];
  reasons: Reason[];
}

/** What a colony needs for the days away. */
export interface ColonyHoliday {
  colony_id: string;
  verdict: 'nobody' | 'nobody_after_top_up' | 'visit';
  top_up: Array<{ need: Need; portion: Portion | null }>;
  visit_every_days: number | null;
  reasons: Reason[];
}

/** A pass as its keeper sees it before it is anybody's. */
export type PassPreview = Fields<'pass'> & { id: string; state: PassDays['state'] };

/** A change of a record, and what stood there before it. */
export interface Revision {
  rev: number;
  at_ms: number;
  by: string | null;
  op_id: string | null;
  asked: Record<string, unknown>;
  before: Record<string, unknown>;
  lost: Record<string, unknown>;
}

export type Gone = ChangeOf & { id: string; rev: number; at_ms: number; by: string | null };

/** Hours of a place: their beginning, mean, least, most [degrees C] and humidity [%]. */
export type MeasuredHour = [number, number | null, number | null, number | null, number | null];

/** Whom a code lets back in, null for a new shelf; without a code what to call beginning one, null where closed. */
export type SeenCode =
  | { person_name: string | null; begin?: undefined }
  | { begin: string | null; person_name?: undefined };

/** An open pairing, shown by the phone that wants to come in. */
export interface Pairing {
  pairing_id: string;
  code: string;
  collect_secret: string;
  expires_ms: number;
  qr_svg: string;
}

/** A pass's way in, shown once. */
export interface PassLink {
  link: string;
  code: string;
  qr_svg: string;
}

export interface Mailbox {
  person_id: string;
  address: string;
  confirmed: boolean;
  asked_ms: number;
}

export interface DoorEntry {
  id: string;
  at_ms: number;
  what: string;
  by: string | null;
  args: Record<string, unknown>;
}

/** A task in a nudge, and the log that "done" makes of it. */
export interface NudgedTask {
  colony_id: string;
  need: Need;
  task_key: string;
  occurrence_id: string;
  suggested: Suggested | null;
}

/** What a push message holds (RFC 8030, and declarative web push). */
export interface Pushed {
  notification: { title: string; body: string; navigate: string; tag: string; lang: string };
  broodshelf: { nudge_id: string; delivery_id: string; items: NudgedTask[] };
  app_badge?: number;
}

/** `{}`: it was done, and there is nothing to say. */
export type Nothing = Record<string, never>;

/** What GET answers. */
export interface Got {
  '/api/me': Me;
  '/api/whoami': { me: Me | null };
  '/api/devices': { devices: Device[] };
  '/api/journal': { entries: DoorEntry[] };
  '/api/larder': { left: Left[]; outlooks: Outlook[]; spoils: Spoiling[] };
  '/api/mail': { available: boolean; people: Mailbox[] };
  '/api/push/health': PushHealth;
  '/api/reckon': { calculators: Calculator[] };
  '/api/records/gone': { gone: Gone[] };
  '/api/sensors': { sensors: SensorState[]; brokers: string[]; topics: string };
  [history: `/api/records/${string}/history`]: { revisions: Revision[] };
  [hours: `/api/places/${string}/hours`]: { hours: MeasuredHour[] };
}

/** What POST answers. */
export interface Posted {
  '/api/claim': Me;
  '/api/claim/look': SeenCode;
  '/api/feeds': { url: string };
  '/api/feeds/revoke': Nothing;
  '/api/holiday': { colonies: ColonyHoliday[]; travel: Reason[] };
  '/api/logout': Nothing;
  '/api/pairings': Pairing;
  '/api/pairings/approve': Nothing;
  '/api/pairings/collect': { state: 'waiting' } | (Me & { state?: undefined });
  '/api/pairings/look': { device_name: string; asked_ms: number };
  '/api/passes/open': { preview: PassPreview } | (Me & { preview?: undefined });
  '/api/push/ack': Nothing;
  '/api/push/test': { delivery_id: string; outcome: string };
  '/api/qr': { svgs: string[] };
  '/api/sensors': { id: string; token: string | null };
  '/api/sync': SyncAnswer;
  [confirm: `/api/mail/${string}/confirm`]: Nothing;
  [end: `/api/sensors/${string}/end`]: Nothing;
  [file: `/api/places/${string}/file`]: ReadFile;
  [lines: `/api/reckon/${string}`]: { lines: string[] };
  [link: `/api/passes/${string}/link`]: PassLink;
  [revoke: `/api/passes/${string}/revoke`]: Nothing;
  [revoked: `/api/devices/${string}/revoke`]: Nothing;
}

/** What PUT answers. */
export interface Put {
  '/api/push/subscription': { id: string };
  [mailbox: `/api/mail/${string}`]: { outcome: string };
}

/** What DELETE answers. */
export interface Removed {
  '/api/push/subscription': Nothing;
  [mailbox: `/api/mail/${string}`]: Nothing;
}

/** Why there was no answer: `ApiProblem` of sync/api.js, for those who only show it. */
export interface Problem extends Error {
  status: number;
  code: string;
}
