// The book's tables as the query builder sees them: SQLite's columns, one to one. Repositories turn rows
// into the words of the core and back.

export interface BookTables {
  command: { number: number; id: string; name: string; at: string; who: string; answer: string };
  component: ComponentRow;
  rule_version: { system: string; version: number; system_name: string; rules: string };
  location: { code: string; name: string; kind: string };
  owner: { code: string; name: string; kind: string; agreement: string | null };
  movement: MovementRow;
  design: DesignRow;
  design_revision: DesignRevisionRow;
  crane: { code: string; crane: string };
  pick_setup: { design: string; setup: string };
  job: JobRow;
  pour: PourRow;
  pour_side: { job: string; pour: string; side: string; set_at: string; set_h: number };
  placed_gang: { job: string; pour: string; side: string; position: number; design: string; at_nm: number };
  gate: GateRow;
  loose_line: LooseLineRow;
  pour_after: { job: string; pour: string; position: number; earlier_pour: string };
  stored_plan: { number: number; id: string; job: string; made_at: string; input: string; answer: string };
  stock_key: { number: number; component: string; owner: string; location: string; condition: string };
  stock_level: { stock_key: number; day: number; quantity: number };
  yard_note: NoteRow;
  attachment: { id: string; paper: string; attachment: string; command: string };
  signed_figure: SignedFigureRow;
  repair_job: { id: string; state: string; repair: string; version: number; command: string };
  truck: { code: string; truck: string };
  truck_load: { id: string; paper: string | null; truck_load: string; version: number; command: string };
  yard_setting: { name: string; setting: string };
  look_alike: { component: string; other: string; tell_apart: string };
  gang: { code: string; command: string };
  gang_step: GangStepRow;
  container: { code: string; component: string; owner: string; command: string };
  container_step: {
    container: string;
    number: number;
    at: string;
    at_ms: number;
    step: string;
    command: string;
  };
  lifting_gear: { serial: string; component: string; owner: string; place: string; command: string };
  gear_inspection: { serial: string; number: number; inspection: string; command: string };
  strip_ticket: StripTicketRow;
  job_entry: JobEntryRow;
  strip_entry: { ticket: string; number: number; id: string; entry: string; command: string };
  stock_count: StockCountRow;
  count_entry: { stock_count: string; number: number; id: string; entry: string; command: string };
}

export interface ComponentRow {
  code: string;
  name: string;
  kind: string;
  weight_grams: number;
  width_nm: number | null;
  height_nm: number | null;
  length_nm: number | null;
  cross_members_nm: string | null;
  tie_holes_nm: string | null;
  system: string | null;
  hire_per_day_cents: number | null;
  regang_per_piece_h: number;
  remark: string | null;
  pressure_pa: number | null;
  pressure_on_side_pa: number | null;
  can_shrink: number;
  value_cents: number | null;
}

export interface MovementRow {
  number: number;
  id: string;
  component: string;
  quantity: number;
  owner: string;
  from_location: string;
  to_location: string;
  condition: string;
  condition_after: string;
  reason: string;
  at: string;
  at_ms: number;
  who: string;
  note_number: string | null;
  remark: string | null;
  basis: string | null;
  basis_date: string | null;
  reverses: string | null;
  paper: string | null;
  recorded_at: string;
  command: string;
}

export interface DesignRow {
  code: string;
  name: string;
  system: string;
  revision: string;
  hand: string;
  geometry: string;
  assemble_h: number;
  break_down_h: number;
}

export interface DesignRevisionRow extends Omit<DesignRow, 'code'> {
  design: string;
  number: number;
  rule_version: number;
  command: string | null;
}

export interface JobRow {
  code: string;
  name: string;
  time_zone: string;
  currency: string;
  units: string;
  plan_from: string;
  shifts: string;
  crew: number;
  labour_per_h_cents: number;
  fly_on_h: number;
  regang_base_h: number;
  clean_h: number;
}

export interface PourRow {
  job: string;
  code: string;
  position: number;
  name: string;
  element: string;
  setting_order: string;
  finish_at: string;
  strip_minimum_h: number;
  strip_h: number;
  tie_component: string | null;
}

export interface GateRow {
  job: string;
  pour: string;
  position: number;
  name: string;
  who: string;
  before_step: string;
  promised: string;
  done: number;
}

export interface LooseLineRow {
  job: string;
  pour: string;
  position: number;
  side: string;
  component: string;
  quantity: number;
  purpose: string;
}

export interface NoteRow {
  id: string;
  kind: string;
  number: string;
  state: string;
  expected_at: string | null;
  note: string;
  counted_there: string | null;
  version: number;
  command: string;
}

export interface SignedFigureRow {
  number: number;
  owner: string;
  component: string;
  as_of: string;
  whose: string;
  quantity: number;
  signed_by: string;
  paper: string | null;
  remark: string | null;
  command: string;
}

export interface GangStepRow {
  gang: string;
  number: number;
  state: string;
  at: string;
  at_ms: number;
  step: string;
  command: string;
}

export interface StripTicketRow {
  id: string;
  number: number;
  job: string;
  pour: string;
  state: string;
  ticket: string;
  result: string | null;
  follows: string | null;
  command: string;
}

export interface StockCountRow {
  id: string;
  number: number;
  state: string;
  stock_count: string;
  result: string | null;
  command: string;
}

export interface JobEntryRow {
  job: string;
  kind: string;
  id: string;
  number: number;
  entry: string;
  command: string;
}
