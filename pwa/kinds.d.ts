// What a record of each kind and a row of each table holds, as server/broodshelf/model and care/catalogue say.
// Written by `python -m tests.support.phone_types`; a test fails when it is stale.

/** A day of the calendar in the household's zone, e.g. `2026-05-01` */
export type Day = string;

/** An ISO 8601 instant with its UTC offset, e.g. `2026-05-01T18:30:00.000+02:00` */
export type Instant = string;

/** A time on the household's clock, `HH:MM` */
export type WallTime = string;

/** An IANA time zone */
export type Zone = string;

export type Stage = 'founding' | 'nanitics' | 'growing' | 'mature';
export type Condition = 'well' | 'settling' | 'resting' | 'queenless_suspected' | 'quarantine' | 'given_away' | 'dead';
export type FoundingMode = 'claustral' | 'semi_claustral' | 'parasitic';
export type Guild = 'omnivore' | 'predator' | 'harvester' | 'honeypot' | 'fungus_grower';
export type PlaceType = 'cabinet' | 'room' | 'cellar' | 'fridge';
export type Origin =
  | 'bought_or_bred'
  | 'home_cockroach'
  | 'wild_web_spider'
  | 'wild_hunter'
  | 'wild_insect'
  | 'garden_fruit'
  | 'shop_fruit'
  | 'hot_syrup'
  | 'home_mixed'
  | 'unknown';
export type ServedAs = 'whole_dead' | 'cut' | 'stunned' | 'live' | 'drop' | 'feeder' | 'crushed' | 'whole' | 'piece';
export type Unit = 'drop' | 'ml' | 'piece' | 'leg' | 'slice' | 'mg' | 'seed' | 'leaf';
export type SizeClass = 'tiny' | 'extra_small' | 'small' | 'medium' | 'large';
export type Tint = 'blue' | 'green' | 'yellow' | 'red';
export type WaterReading = 'full' | 'three_quarters' | 'half' | 'quarter' | 'empty';
export type WaterAction = 'read' | 'refill' | 'new_tube' | 'hydrate';
export type Outcome = 'all' | 'some' | 'ignored';
export type ColourSeen = 'gasters' | 'brood';
export type Coarse = 'none' | 'few' | 'some' | 'many';
export type BroodSeen = 'none' | 'seen' | 'few' | 'some' | 'many';
export type Brood = 'eggs' | 'larvae' | 'pupae';
export type MoveWay = 'offered' | 'on_its_own' | 'forced' | 'finished';
export type PersonRole = 'keeper' | 'stand_in';
export type Degrees = 'c' | 'f';
export type Volumes = 'ml' | 'floz';
export type FoodNeed = 'sugar' | 'protein' | 'seeds' | 'leaves';
export type Need =
  | 'sugar'
  | 'protein'
  | 'seeds'
  | 'leaves'
  | 'water'
  | 'leftovers'
  | 'room'
  | 'barrier'
  | 'rest'
  | 'glance';
export type FaultCode = 'leak' | 'flood' | 'mould' | 'escape' | 'mites' | 'many_dead' | 'heater';
export type Answer = 'feeding' | 'water' | 'check' | 'move';
export type Look =
  | 'ask'
  | 'dry_air'
  | 'fault'
  | 'freezing'
  | 'fridge_open'
  | 'heater_off'
  | 'heater_on'
  | 'leak'
  | 'mould_look'
  | 'move_end'
  | 'move_look'
  | 'overheating'
  | 'rest_air'
  | 'rest_fits'
  | 'rest_water'
  | 'rising_fast'
  | 'risk_look'
  | 'too_cold'
  | 'too_hot'
  | 'wake_up'
  | 'water_look';
export type What =
  | 'sugar'
  | 'protein'
  | 'seeds'
  | 'leaves'
  | 'water'
  | 'leftovers'
  | 'room'
  | 'barrier'
  | 'rest'
  | 'glance'
  | 'ask'
  | 'dry_air'
  | 'fault'
  | 'freezing'
  | 'fridge_open'
  | 'heater_off'
  | 'heater_on'
  | 'leak'
  | 'mould_look'
  | 'move_end'
  | 'move_look'
  | 'overheating'
  | 'rest_air'
  | 'rest_fits'
  | 'rest_water'
  | 'rising_fast'
  | 'risk_look'
  | 'too_cold'
  | 'too_hot'
  | 'wake_up'
  | 'water_look';
export type Verdict = 'fine' | 'wash' | 'wait' | 'hold' | 'refuse';
export type VesselType = 'tube' | 'nest' | 'outworld';
export type Trait = 'stings';
export type FieldForm = 'day' | 'instant' | 'warmth' | 'record';
export type Continent = 'europe' | 'asia' | 'africa' | 'north_america' | 'south_america' | 'australia';

/** A reason, notice or caution: a code of the messages and what goes into its sentence. */
export interface Reason {
  code: string;
  args: Record<string, unknown>;
}

/** What to serve; `lot_id` and `origin` where it is in the house. */
export interface Portion {
  food_code: string;
  amount: number;
  unit: Unit;
  form: ServedAs;
  size_class?: SizeClass;
  lot_id?: string;
  origin?: Origin;
}

/** The log that 'as suggested' makes, without colony and time. */
export type Suggested = ChangeOf<'feeding' | 'check' | 'water' | 'fault' | 'move' | 'count' | 'colony'>;

/** The fields of a task that a stand-in sees instead. */
export interface ForStandIn {
  portion?: Portion;
  suggested?: Suggested | null;
  reasons?: Array<Reason>;
}

/** One thing to do. `key`: `what` and `about` as one text; `stand_in` null: it is the keeper's alone. */
export interface PlannedTask {
  key: string;
  what: What;
  about: string;
  need: Need;
  due_at_ms: number;
  urgent: boolean;
  from_gauge: boolean;
  portion: Portion | null;
  suggested: Suggested | null;
  reasons: Array<Reason>;
  cautions: Array<Reason>;
  stand_in: ForStandIn | null;
}

/** A store that runs down; rates in `unit` per day. `gain_per_portion` null: a feeding fills it. */
export interface PlannedGauge {
  need: Need;
  unit: string;
  level: number;
  capacity: number;
  rate_per_day: number;
  rate_low: number;
  rate_high: number;
  as_of_ms: number;
  due_level: number;
  basis: string;
  gain_per_portion: number | null;
  full_mm?: number | null;
  reasons: Array<Reason>;
}

/** How often a food of the running tasting is taken, and the chance that it is the best. */
export interface TastedFood {
  food_code: string;
  offers: number;
  likes: number;
  best: number;
  low: number;
  mean: number;
  high: number;
}

/** Workers from the last count to a month ahead: `[ms since 1970 UTC, low, best, high]`. */
export interface GrowthAhead {
  counts: number;
  model: string;
  curve: Array<[number, number, number, number]>;
}

/** Between which days workers hatch, 80 of 100; null at an end beyond half a year. */
export interface Hatching {
  low_on: string;
  best_on: string | null;
  high_on: string | null;
}

/** The brood to look for next in a founding, and by when it should be there. */
export interface AwaitedBrood {
  brood: Brood;
  by_on: string;
}

/**
 * What is in the nest over time. `group`: of ants, whose source phones say by it; `source`: the same in
 * English, for phones of an earlier version. `stages`: `[ms, eggs, small larvae, large larvae, pupae, workers]`,
 * each of the five `[low, best, high]`; `hatching`: of the first workers while `founding`, else of the next.
 */
export interface LivingCensus {
  founding: boolean;
  group?: string;
  measured: boolean;
  source: string;
  hatching: Hatching | null;
  asks: AwaitedBrood | null;
  stages: Array<Array<unknown>>;
  why: Array<Reason>;
}

/** The degree-days above `threshold_c` since a day (ISO); `assumed`: the share of days that nobody measured. */
export interface SeasonWarmth {
  since_on: string;
  degree_days: number;
  threshold_c: number;
  assumed: number;
}

/**
 * One need.
 *
 * `food`: it is met by something to eat. `answered_by`: the kind of event that meets it. `may_wait`: a rule or a
 * pause of the keeper may put it off; what may not waits for hours at most. `keeper_sets`: the keeper may give it a
 * rhythm of their own; what is seen and measured follows that alone. `stand_in`: a stand-in may see to it.
 */
export interface NeedRow {
  food: boolean;
  answered_by: Answer;
  may_wait: boolean;
  keeper_sets: boolean;
  stand_in: boolean;
}

/**
 * One fault.
 *
 * `touches`: the need under which it is seen to. `of_nest`: it stays behind with the nest that they left.
 * `drives_out`: a nest with it may be emptied by force. `loses_water`: it explains water that went too fast.
 * `first_step`: what a stand-in can do about it, as a reason code; None: only call the keeper.
 */
export interface FaultRow {
  touches: Need;
  of_nest: boolean;
  drives_out: boolean;
  loses_water: boolean;
  first_step: string | null;
}

/**
 * One kind of task.
 *
 * `stand_in`: a stand-in may do it.
 * `met_by`: the kind of event that does it, besides a check of its need; None: nothing does but what it suggests.
 * `sensed`: sensors begin and end it, without anybody logging something.
 * `wakes`: waiting for the end of the quiet hours could kill, so it is told in them, too.
 * `steps`: what a stand-in is told one after the other, as reason codes, where the kind alone decides it; a phone
 * says them of tasks that it makes itself. Common practice, no source.
 */
export interface TaskRow {
  stand_in: boolean;
  met_by: 'water' | 'move' | null;
  sensed: boolean;
  wakes: boolean;
  steps: Array<string>;
}

/** A yearly rest: how cool, in °C, and how long, in months. */
export interface RestRow {
  low_c: number;
  high_c: number;
  low_months: number;
  high_months: number;
  summer?: boolean;
}

/** A species or group, as `care/catalogue` explains it. `fresh_mg`: smallest, usual and largest worker. */
export interface SpeciesRow {
  name: string;
  genus: string;
  continents: Array<Continent>;
  worker_mm: [number, number];
  guild: Guild;
  founding: FoundingMode;
  temp_c: [number, number];
  majors: boolean;
  climbs: boolean;
  fresh_mg?: [number, number, number];
  rest?: RestRow;
  yearly_clock?: boolean;
  stings?: boolean;
  slow?: boolean;
  hunts_by_sight?: boolean;
  spins_cocoons?: boolean;
  gamergates?: boolean;
  cautions?: Array<string>;
  sources?: Record<string, string>;
}

/** What 100 g of a food hold, in g and kcal; absent where its source reports nothing, which is not 0. */
export interface CompositionRow {
  water_g?: number;
  protein_g?: number;
  fat_g?: number;
  carbohydrate_g?: number;
  fibre_g?: number;
  sugars_g?: number;
  ash_g?: number;
  kcal?: number;
}

/** A size class of a prey. `mass_mg`: low, usual and high; `nymph`: made of what a nymph is made of. */
export interface PreySizeRow {
  length_mm: [number, number];
  mass_mg: [number, number, number];
  nymph?: boolean;
}

/**
 * A food. `remove_after_h`: how long it may lie; `feeder_h`: how long in a closed feeder; `serves`: which guilds.
 *
 * `origin`: the only one that it can have; `usual_origin`: the one that is taken where nobody said another.
 */
export interface FoodRow {
  need: FoodNeed;
  unit: Unit;
  form: ServedAs;
  serves: Array<Guild>;
  remove_after_h?: number;
  feeder_h?: number;
  keeps_days?: number;
  origin?: Origin;
  usual_origin?: Origin;
  mass_mg?: number;
  mass_source?: string;
  slice_share?: number;
  leg_share?: number;
  leg_share_source?: string;
  composition?: CompositionRow;
  nymph_composition?: CompositionRow;
  source?: string;
  size?: Partial<Record<SizeClass, PreySizeRow>>;
}

/** A kind of vessel. `size_mm`: inner length, width and height, of what is no tube. */
export interface VesselRow {
  kind: VesselType;
  reservoir_ml: number;
  room_workers: number;
  outer_mm?: number;
  bore_mm?: number;
  length_mm?: number;
  volume_ml?: number;
  size_mm?: [number, number, number];
}

/** A caution: the trait that brings it, if one does, and its source. */
export interface CautionRow {
  source: string;
  trait?: Trait;
}

/** What an origin means before a food is offered; `hold_days` where that is a hold. */
export interface OriginRow {
  verdict: Verdict;
  hold_days?: number;
}

/** All that the phone gets, by code; the rows of the model's tables as objects. */
export interface CatalogueRows {
  species: Record<string, SpeciesRow>;
  default_source: Record<string, string>;
  foods: Record<string, FoodRow>;
  vessels: Record<string, VesselRow>;
  cautions: Record<string, CautionRow>;
  origins: Record<string, OriginRow>;
  needs: Partial<Record<Need, NeedRow>>;
  faults: Partial<Record<FaultCode, FaultRow>>;
  tasks: Partial<Record<What, TaskRow>>;
  again_days: Partial<Record<What, number>>;
  drop_ul: number;
  fields: Partial<Record<FieldForm, Array<string>>>;
}

/**
 * The household's one record of itself: its clock, when it cares for its ants and when it sleeps.
 *
 * `patience_hours`: after which somebody else is told of what waits. `invented`: a demonstration.
 */
export interface Household {
  /** at most 80 characters */
  name: string;
  zone: Zone;
  care_hours?: Array<WallTime> | null;
  quiet_from?: WallTime | null;
  quiet_to?: WallTime | null;
  /** 1 to 72 h */
  patience_hours?: number | null;
  /** 0 to 400 days */
  backup_patience_days?: number | null;
  /** written by the server */
  invented?: boolean | null;
}

/** What every record says: whether it was deleted. */
export interface Kept {
  gone?: boolean | null;
}

/**
 * Somebody of the household. `pass_id`: the pass that a stand-in came by.
 *
 * `language`: the one that they are told in, as `language` or `language-REGION` (BCP 47).
 * `degrees`, `volumes`: the units that they are told in; those of the region where nobody chose.
 */
export interface Person {
  /** at most 60 characters */
  name: string;
  /** written by the server */
  role?: PersonRole | null;
  /** of a pass; written by the server */
  pass_id?: string | null;
  /** at most 12 characters */
  language?: string | null;
  degrees?: Degrees | null;
  volumes?: Volumes | null;
}

/** Where vessels stand, and how warm and moist it is there. */
export interface Place {
  /** at most 60 characters */
  name: string;
  place_type?: PlaceType | null;
  /** -10 to 45 °C */
  day_temp_c?: number | null;
  /** -10 to 45 °C */
  night_temp_c?: number | null;
  /** 0 to 100 % */
  humidity_pct?: number | null;
}

/** What a colony lives in: one of the catalogue, or one's own with its sizes. */
export interface Vessel {
  /** at most 60 characters */
  name?: string | null;
  /** at most 60 characters */
  vessel_code?: string | null;
  /** 3 to 200 mm */
  bore_mm?: number | null;
  /** 20 to 1000 mm */
  length_mm?: number | null;
  /** 0.5 to 200000 mL */
  volume_ml?: number | null;
  /** 0 to 5000 mL */
  reservoir_ml?: number | null;
  /** 0 to 1000 mm */
  reservoir_length_mm?: number | null;
  has_outworld?: boolean | null;
}

/**
 * A colony. `guild`, `founding_mode` and `stings`: the keeper's word on a species of their own.
 *
 * `interval_days`: how many days apart by need, as an older app set it; `rule` took its place. `helper_hint` and
 * `helper_photo_id`: what the keeper tells and shows whoever stands in, above the steps of each task.
 */
export interface Colony {
  /** at most 60 characters */
  name: string;
  /** 1 to 9999 */
  number?: number | null;
  /** at most 60 characters */
  species_code?: string | null;
  /** at most 80 characters */
  species_name?: string | null;
  /** 0.8 to 40 mm */
  worker_length_mm?: number | null;
  founding_mode?: FoundingMode | null;
  guild?: Guild | null;
  stings?: boolean | null;
  stage?: Stage | null;
  condition?: Condition | null;
  condition_until?: Day | null;
  founded_on?: Day | null;
  acquired_on?: Day | null;
  /** 0 to 1000 */
  queens?: number | null;
  /** of a vessel */
  vessel_id?: string | null;
  /** of a place */
  place_id?: string | null;
  interval_days?: Partial<Record<Need, number>> | null;
  /** at most 60 characters */
  host_species_code?: string | null;
  resting_since?: Day | null;
  /** at most 200 characters */
  came_from?: string | null;
  /** at most 200 characters */
  went_to?: string | null;
  /** at most 200 characters */
  died_of?: string | null;
  /** at most 4000 characters */
  remark?: string | null;
  /** at most 300 characters */
  helper_hint?: string | null;
  /** of a photo */
  helper_photo_id?: string | null;
}

/** A food in the house, and where it is from. `percent_ww`: grams of sugar in 100 g. */
export interface Lot {
  /** at most 80 characters */
  name?: string | null;
  /** at most 60 characters */
  food_code: string;
  origin: Origin;
  got_on?: Day | null;
  hold_until?: Day | null;
  use_by?: Day | null;
  /** 0 to 1000000 */
  amount?: number | null;
  unit?: Unit | null;
  size_class?: SizeClass | null;
  tint?: Tint | null;
  /** 0 to 100 % w/w */
  percent_ww?: number | null;
  finished_on?: Day | null;
  /** at most 2000 characters */
  remark?: string | null;
}

/** The keeper's own rhythm for a need of a colony. `weekdays`: 0 is Monday, none means all. */
export interface Rule {
  /** of a colony */
  colony_id: string;
  need: 'sugar' | 'protein' | 'seeds' | 'leaves' | 'barrier' | 'rest' | 'glance';
  /** 0.25 to 365 days */
  every_days?: number | null;
  /** 0 to 6 */
  weekdays?: Array<number> | null;
  at?: WallTime | null;
  paused_until?: Day | null;
}

/** Foods that are offered to some colonies in turn. */
export interface Tasting {
  /** at most 80 characters */
  name: string;
  /** of a colony */
  colony_ids: Array<string>;
  /** at most 60 characters */
  food_codes: Array<string>;
  started_on: Day;
  ended_on?: Day | null;
}

/**
 * What lets a stand-in in: for these colonies, on these days.
 *
 * `language`, `degrees`, `volumes`: the language that the stand-in reads, and the units in it.
 */
export interface Pass {
  /** at most 60 characters */
  name: string;
  /** of a colony */
  colony_ids: Array<string>;
  starts_on: Day;
  ends_on: Day;
  /** at most 4000 characters */
  instructions?: string | null;
  /** at most 200 characters */
  emergency_contact?: string | null;
  /** of a colony */
  stinging_ok_ids?: Array<string> | null;
  /** at most 12 characters */
  language?: string | null;
  degrees?: Degrees | null;
  volumes?: Volumes | null;
  /** 0 to 100000000000000 ms since 1970 UTC; written by the server */
  revoked_at_ms?: number | null;
}

/** Which colony an event is about. */
export interface OfColony {
  /** of a colony */
  colony_id: string;
}

/** What every event says: when it happened, and what the keeper wrote beside it. */
export interface Happened {
  happened_at: Instant;
  /** at most 2000 characters */
  remark?: string | null;
}

/**
 * What an event answers. `task_key`: the task; `suggested`: logged as the plan said.
 *
 * `possible_repeat`: somebody else logged the same; it does not count until it is `confirmed`.
 */
export interface Answers {
  /** at most 120 characters */
  task_key?: string | null;
  suggested?: boolean | null;
  /** written by the server */
  possible_repeat?: boolean | null;
  confirmed?: boolean | null;
}

/** Food was given. `despite`: the codes of the warnings about its origin that the keeper read and went past. */
export interface Feeding {
  need: FoodNeed;
  /** at most 60 characters */
  food_code?: string | null;
  /** of a lot */
  lot_id?: string | null;
  origin?: Origin | null;
  form?: ServedAs | null;
  size_class?: SizeClass | null;
  /** 0 to 100000 */
  amount?: number | null;
  unit?: Unit | null;
  /** of a tasting */
  tasting_id?: string | null;
  /** at most 60 characters */
  despite?: Array<string> | null;
}

/** Somebody looked: after what a feeding left, or at what a need is about. */
export interface Check {
  /** of a feeding */
  feeding_id?: string | null;
  need?: Need | null;
  outcome?: Outcome | null;
  /** 0 to 2000 h */
  after_h?: number | null;
  leftovers_removed?: boolean | null;
  level?: WaterReading | null;
  colour_seen?: Array<ColourSeen> | null;
}

/** Water was read or given: by eye (`reading`), by a ruler (`level_mm`), or what was poured. */
export interface Water {
  action: WaterAction;
  reading?: WaterReading | null;
  /** 0 to 1000 mm */
  level_mm?: number | null;
  /** 0 to 5000 mL */
  amount_ml?: number | null;
}

/** Something went wrong; open until it is resolved. */
export interface Fault {
  fault: FaultCode;
  resolved_at?: Instant | null;
  /** at most 500 characters */
  resolution?: string | null;
  mould_near_brood?: boolean | null;
  /** 0 to 1 */
  mould_share?: number | null;
}

/**
 * The colony was counted, or estimated: workers exactly, within two ends or in a word; brood in words.
 *
 * On a picture, `photo_id`, they are `workers` with the ends between which they lie in four of five such counts.
 * `workers_at_least`: as many are there for sure; alone where only a part of the nest was to be seen.
 */
export interface Count {
  /** 0 to 1000000 */
  workers?: number | null;
  /** 0 to 1000000 */
  workers_low?: number | null;
  /** 0 to 1000000 */
  workers_high?: number | null;
  /** 0 to 1000000 */
  workers_at_least?: number | null;
  workers_coarse?: Coarse | null;
  eggs?: BroodSeen | null;
  larvae?: BroodSeen | null;
  pupae?: BroodSeen | null;
  /** 0 to 1000 */
  queens?: number | null;
  males_only?: boolean | null;
  /** of a photo */
  photo_id?: string | null;
}

/** A nest was offered, or the colony moved into it. */
export interface Move {
  /** of a vessel */
  vessel_id?: string | null;
  how?: MoveWay | null;
  fresh_reservoir?: boolean | null;
}

/** Brood of another colony was added. */
export interface Boost {
  /** of a colony */
  donor_colony_id?: string | null;
  brood: Brood;
  /** 1 to 10000 */
  number?: number | null;
}

/** At which place it was measured. */
export interface AtPlace {
  /** of a place */
  place_id: string;
}

/** A place was measured. */
export interface Climate {
  /** -20 to 80 °C */
  temperature_c?: number | null;
  /** 0 to 100 % */
  humidity_pct?: number | null;
}

/** Something worth writing down. */
export interface Note {
  /** at most 4000 characters */
  text: string;
}

/**
 * A picture was taken; its bytes travel by themselves, under their hash. `dots`: what a keeper counted on it.
 *
 * A dot is its place, across and down in ten-thousandths of the picture, and what it is: 0 a worker, 1 brood, 2 and 3
 * the same but drawn by the keeper. What a reader does not know is no dot. `dots_frame`: left, top, right and bottom
 * of what counts. `dots_worker_px`: how long a worker is in the picture. `dots_pale`: its ants are paler than
 * their ground. `dots_threshold`: from which score on a proposal counted; `dots_learnt`: from which it should in
 * the next picture. `dots_corrected`: how many proposals stood, were added and were taken away. `dots_number`:
 * workers, `dots_low` to `dots_high` in four of five such counts, `dots_at_least` for sure; there may be more
 * workers than dots are kept.
 */
export interface Photo {
  /** A SHA-256 in lower-case hexadecimal */
  sha256: string;
  /** 1 to 10000 px */
  width_px?: number | null;
  /** 1 to 10000 px */
  height_px?: number | null;
  dots?: Array<Array<number>> | null;
  /** 0 to 10000 */
  dots_frame?: Array<number> | null;
  /** 1 to 5000 px */
  dots_worker_px?: number | null;
  dots_pale?: boolean | null;
  /** 0 to 1 */
  dots_threshold?: number | null;
  /** 0 to 1 */
  dots_learnt?: number | null;
  /** 0 to 10000 */
  dots_corrected?: Array<number> | null;
  /** 0 to 1000000 */
  dots_number?: number | null;
  /** 0 to 1000000 */
  dots_low?: number | null;
  /** 0 to 1000000 */
  dots_high?: number | null;
  /** 0 to 1000000 */
  dots_at_least?: number | null;
}

/** A need was put off. */
export interface Later {
  need: Need;
  until: Instant;
  /** at most 500 characters */
  why?: string | null;
}

/** What a colony needs, with reasons; see docs/http-api.md, "A plan". `inputs_rev`: what it was made from. */
export interface Plan {
  colony_id: string;
  gauges: Array<PlannedGauge>;
  tasks: Array<PlannedTask>;
  notices: Array<Reason>;
  cautions: Array<Reason>;
  tasting: Array<TastedFood>;
  tasting_waits?: Reason | null;
  growth?: GrowthAhead | null;
  census?: LivingCensus | null;
  warmth?: SeasonWarmth | null;
  valid_until_ms: number;
  computed_at_ms: number;
  model_version: string;
  inputs_rev: number;
}

/**
 * What was measured in a place on a day of the household's zone: mean, least and most, of `hours` hours.
 *
 * `day_c` and `night_c`: means of the two halves of the day, null where too few hours of that half were measured.
 */
export interface PlaceDay {
  /** of a place; written by the server */
  place_id: string;
  /** written by the server */
  on: Day;
  /** 0 to 25 h; written by the server */
  hours: number;
  /** -40 to 70 °C; written by the server */
  mean_c?: number | null;
  /** -40 to 70 °C; written by the server */
  low_c?: number | null;
  /** -40 to 70 °C; written by the server */
  high_c?: number | null;
  /** -40 to 70 °C; written by the server */
  day_c?: number | null;
  /** -40 to 70 °C; written by the server */
  night_c?: number | null;
  /** 0 to 100 %; written by the server */
  humidity_pct?: number | null;
  /** 0 to 100 %; written by the server */
  humidity_low_pct?: number | null;
  /** 0 to 100 %; written by the server */
  humidity_high_pct?: number | null;
}

export type ThingKind = 'household' | 'person' | 'place' | 'vessel' | 'colony' | 'lot' | 'rule' | 'tasting' | 'pass';

export type EventKind =
  | 'feeding'
  | 'check'
  | 'water'
  | 'fault'
  | 'count'
  | 'move'
  | 'boost'
  | 'climate'
  | 'note'
  | 'photo'
  | 'later';

export type DerivedKind = 'plan' | 'place_day';

export type Kind = ThingKind | EventKind | DerivedKind;

/** The fields of a record by its kind. */
export interface FieldsOf {
  household: Household & Kept;
  person: Person & Kept;
  place: Place & Kept;
  vessel: Vessel & Kept;
  colony: Colony & Kept;
  lot: Lot & Kept;
  rule: Rule & Kept;
  tasting: Tasting & Kept;
  pass: Pass & Kept;
  feeding: OfColony & Happened & Answers & Kept & Feeding;
  check: OfColony & Happened & Answers & Kept & Check;
  water: OfColony & Happened & Answers & Kept & Water;
  fault: OfColony & Happened & Answers & Kept & Fault;
  count: OfColony & Happened & Answers & Kept & Count;
  move: OfColony & Happened & Answers & Kept & Move;
  boost: OfColony & Happened & Answers & Kept & Boost;
  climate: AtPlace & Happened & Answers & Kept & Climate;
  note: OfColony & Happened & Answers & Kept & Note;
  photo: OfColony & Happened & Answers & Kept & Photo;
  later: OfColony & Happened & Answers & Kept & Later;
  plan: Plan & Kept;
  place_day: PlaceDay & Kept;
}

/** A field of some kind. */
export type FieldName = { [k in Kind]: keyof FieldsOf[k] }[Kind];

/** What a record of a kind holds: its fields, and none of another kind. Of several kinds each field may be read. */
export type Fields<K extends Kind = Kind> = {
  [k in K]: FieldsOf[k] & { [name in Exclude<FieldName, keyof FieldsOf[k]>]?: undefined };
}[K];

/** What an operation sets of a record, by its kind. */
export type ChangeOf<K extends Kind = Kind> = { [k in K]: { kind: k; set: Partial<Fields<k>> } }[K];
