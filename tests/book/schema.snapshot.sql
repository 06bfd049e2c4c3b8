CREATE INDEX attachment_paper ON attachment (paper);

CREATE INDEX movement_basis ON movement (component, owner) WHERE basis IS NOT NULL;

CREATE INDEX movement_command ON movement (command);

CREATE INDEX movement_component ON movement (component);

CREATE INDEX movement_component_time ON movement (component, at_ms);

CREATE INDEX movement_condition ON movement (condition) WHERE condition <> 'ready';

CREATE INDEX movement_condition_after ON movement (condition_after) WHERE condition_after <> 'ready';

CREATE INDEX movement_from ON movement (from_location);

CREATE INDEX movement_owner ON movement (owner);

CREATE INDEX movement_paper ON movement (paper) WHERE paper IS NOT NULL;

CREATE INDEX movement_reason ON movement (reason);

CREATE INDEX movement_time ON movement (at_ms);

CREATE INDEX movement_to ON movement (to_location);

CREATE INDEX signed_figure_of ON signed_figure (owner, component, number);

CREATE INDEX stored_plan_job ON stored_plan (job, number);

CREATE TABLE attachment (
  id TEXT PRIMARY KEY NOT NULL CHECK (length(trim(id)) > 0),
  paper TEXT NOT NULL CHECK (length(trim(paper)) > 0),
  attachment TEXT NOT NULL CHECK (json_valid(attachment)),
  command TEXT NOT NULL REFERENCES command (id) DEFERRABLE INITIALLY DEFERRED
) STRICT;

CREATE TABLE command (
  number INTEGER PRIMARY KEY CHECK (number > 0),
  id TEXT NOT NULL UNIQUE CHECK (length(trim(id)) > 0),
  name TEXT NOT NULL CHECK (length(trim(name)) > 0),
  at TEXT NOT NULL CONSTRAINT command_at_is_an_instant CHECK (
  at GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]T[0-9][0-9]:[0-9][0-9]*'
  AND (at GLOB '*Z' OR at GLOB '*[+-][0-9][0-9]:[0-9][0-9]')
  AND substr(at, 1, 10) IS date(substr(at, 1, 10))
  AND unixepoch(at) IS NOT NULL),
  who TEXT NOT NULL,
  answer TEXT NOT NULL CHECK (json_valid(answer))
) STRICT;

CREATE TABLE component (
  code TEXT PRIMARY KEY NOT NULL CHECK (length(trim(code)) > 0),
  name TEXT NOT NULL,
  kind TEXT NOT NULL CHECK (length(trim(kind)) > 0),
  weight_grams INTEGER NOT NULL
    CONSTRAINT weight_is_not_below_zero CHECK (weight_grams BETWEEN 0 AND 9007199254740991),
  width_nm INTEGER CHECK (width_nm BETWEEN 1 AND 9007199254740991),
  height_nm INTEGER CHECK (height_nm BETWEEN 1 AND 9007199254740991),
  length_nm INTEGER CHECK (length_nm BETWEEN 1 AND 9007199254740991),
  cross_members_nm TEXT CHECK (json_valid(cross_members_nm)),
  tie_holes_nm TEXT CHECK (json_valid(tie_holes_nm)),
  system TEXT,
  hire_per_day_cents INTEGER
    CONSTRAINT hire_is_not_below_zero CHECK (hire_per_day_cents BETWEEN 0 AND 9007199254740991),
  regang_per_piece_h REAL NOT NULL CONSTRAINT regang_per_piece_h_from_0_to_10000 CHECK (regang_per_piece_h BETWEEN 0 AND 10000),
  remark TEXT
, pressure_pa INTEGER CHECK (pressure_pa BETWEEN 1 AND 9007199254740991), pressure_on_side_pa INTEGER
  CHECK (pressure_on_side_pa BETWEEN 1 AND 9007199254740991), can_shrink INTEGER NOT NULL DEFAULT 0 CHECK (can_shrink IN (0, 1)), value_cents INTEGER CHECK (value_cents BETWEEN 0 AND 9007199254740991)) STRICT;

CREATE TABLE container (
  code TEXT PRIMARY KEY NOT NULL REFERENCES location (code),
  -- Which piece it is itself, and whose.
  component TEXT NOT NULL REFERENCES component (code),
  owner TEXT NOT NULL REFERENCES owner (code),
  command TEXT NOT NULL REFERENCES command (id) DEFERRABLE INITIALLY DEFERRED
) STRICT;

CREATE TABLE container_step (
  container TEXT NOT NULL REFERENCES container (code),
  number INTEGER NOT NULL CHECK (number > 0),
  at TEXT NOT NULL CHECK (
  at GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]T[0-9][0-9]:[0-9][0-9]*'
  AND (at GLOB '*Z' OR at GLOB '*[+-][0-9][0-9]:[0-9][0-9]')
  AND substr(at, 1, 10) IS date(substr(at, 1, 10))
  AND unixepoch(at) IS NOT NULL),
  at_ms INTEGER NOT NULL,
  step TEXT NOT NULL CHECK (json_valid(step)),
  command TEXT NOT NULL REFERENCES command (id) DEFERRABLE INITIALLY DEFERRED,
  PRIMARY KEY (container, number)
) STRICT;

CREATE TABLE count_entry (
  stock_count TEXT NOT NULL REFERENCES stock_count (id),
  number INTEGER NOT NULL CHECK (number > 0),
  id TEXT NOT NULL UNIQUE CHECK (length(trim(id)) > 0),
  entry TEXT NOT NULL CHECK (json_valid(entry)),
  command TEXT NOT NULL REFERENCES command (id) DEFERRABLE INITIALLY DEFERRED,
  PRIMARY KEY (stock_count, number)
) STRICT;

CREATE TABLE crane (
  code TEXT PRIMARY KEY NOT NULL CHECK (length(trim(code)) > 0),
  crane TEXT NOT NULL CHECK (json_valid(crane))
) STRICT;

CREATE TABLE design (
  code TEXT PRIMARY KEY NOT NULL CHECK (length(trim(code)) > 0),
  name TEXT NOT NULL,
  system TEXT NOT NULL CHECK (length(trim(system)) > 0),
  revision TEXT NOT NULL,
  hand TEXT NOT NULL CHECK (hand IN ('left', 'right', 'symmetrical')),
  geometry TEXT NOT NULL CHECK (json_valid(geometry)),
  assemble_h REAL NOT NULL CONSTRAINT assemble_h_from_0_to_10000 CHECK (assemble_h BETWEEN 0 AND 10000),
  break_down_h REAL NOT NULL CONSTRAINT break_down_h_from_0_to_10000 CHECK (break_down_h BETWEEN 0 AND 10000)
) STRICT;

CREATE TABLE design_revision (
  design TEXT NOT NULL CHECK (length(trim(design)) > 0),
  number INTEGER NOT NULL CHECK (number > 0),
  name TEXT NOT NULL,
  system TEXT NOT NULL,
  revision TEXT NOT NULL,
  hand TEXT NOT NULL CHECK (hand IN ('left', 'right', 'symmetrical')),
  geometry TEXT NOT NULL CHECK (json_valid(geometry)),
  assemble_h REAL NOT NULL,
  break_down_h REAL NOT NULL,
  -- The rule tables in force when it was saved; 0 where there were none.
  rule_version INTEGER NOT NULL CHECK (rule_version >= 0),
  -- NULL for what was in the book before its states were kept.
  command TEXT REFERENCES command (id) DEFERRABLE INITIALLY DEFERRED,
  PRIMARY KEY (design, number)
) STRICT;

CREATE TABLE gang (
  -- Its tag, and the location that holds its pieces.
  code TEXT PRIMARY KEY NOT NULL REFERENCES location (code),
  command TEXT NOT NULL REFERENCES command (id) DEFERRABLE INITIALLY DEFERRED
) STRICT;

CREATE TABLE gang_step (
  gang TEXT NOT NULL REFERENCES gang (code),
  number INTEGER NOT NULL CHECK (number > 0),
  state TEXT NOT NULL CHECK (state IN ('assembled', 'standing', 'stripped', 'standing-by', 'broken-down')),
  at TEXT NOT NULL CHECK (
  at GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]T[0-9][0-9]:[0-9][0-9]*'
  AND (at GLOB '*Z' OR at GLOB '*[+-][0-9][0-9]:[0-9][0-9]')
  AND substr(at, 1, 10) IS date(substr(at, 1, 10))
  AND unixepoch(at) IS NOT NULL),
  at_ms INTEGER NOT NULL,
  step TEXT NOT NULL CHECK (json_valid(step)),
  command TEXT NOT NULL REFERENCES command (id) DEFERRABLE INITIALLY DEFERRED,
  PRIMARY KEY (gang, number)
) STRICT;

CREATE TABLE gate (
  job TEXT NOT NULL,
  pour TEXT NOT NULL,
  position INTEGER NOT NULL CHECK (position > 0),
  name TEXT NOT NULL CHECK (length(trim(name)) > 0),
  who TEXT NOT NULL,
  before_step TEXT NOT NULL CHECK (before_step IN ('set', 'close', 'pour')),
  promised TEXT NOT NULL CONSTRAINT promised_is_a_date CHECK (promised IS date(promised)),
  done INTEGER NOT NULL CHECK (done IN (0, 1)),
  PRIMARY KEY (job, pour, position),
  FOREIGN KEY (job, pour) REFERENCES pour (job, code)
) STRICT;

CREATE TABLE gear_inspection (
  serial TEXT NOT NULL REFERENCES lifting_gear (serial),
  number INTEGER NOT NULL CHECK (number > 0),
  inspection TEXT NOT NULL CHECK (json_valid(inspection)),
  command TEXT NOT NULL REFERENCES command (id) DEFERRABLE INITIALLY DEFERRED,
  PRIMARY KEY (serial, number)
) STRICT;

CREATE TABLE job (
  code TEXT PRIMARY KEY NOT NULL CHECK (length(trim(code)) > 0),
  name TEXT NOT NULL,
  time_zone TEXT NOT NULL CHECK (length(trim(time_zone)) > 0),
  currency TEXT NOT NULL,
  units TEXT NOT NULL CHECK (units IN ('us', 'metric')),
  plan_from TEXT NOT NULL CONSTRAINT plan_from_is_a_date CHECK (plan_from IS date(plan_from)),
  shifts TEXT NOT NULL CHECK (json_valid(shifts)),
  crew REAL NOT NULL CONSTRAINT crew_is_somebody CHECK (crew > 0 AND crew <= 10000),
  labour_per_h_cents INTEGER NOT NULL
    CONSTRAINT labour_is_not_below_zero CHECK (labour_per_h_cents BETWEEN 0 AND 9007199254740991),
  fly_on_h REAL NOT NULL CONSTRAINT fly_on_h_from_0_to_10000 CHECK (fly_on_h BETWEEN 0 AND 10000),
  regang_base_h REAL NOT NULL CONSTRAINT regang_base_h_from_0_to_10000 CHECK (regang_base_h BETWEEN 0 AND 10000),
  clean_h REAL NOT NULL CONSTRAINT clean_h_from_0_to_10000 CHECK (clean_h BETWEEN 0 AND 10000)
) STRICT;

CREATE TABLE job_entry (
  job TEXT NOT NULL REFERENCES job (code),
  kind TEXT NOT NULL CHECK (kind IN ('settings', 'calendar-exception', 'crane-booking', 'pour-facts', 'telling',
    'fixed-choice', 'planned-stock', 'applied-change', 'kept-what-if', 'day-report', 'sheet-print',
    'shortfall-decision')),
  id TEXT NOT NULL CHECK (length(trim(id)) > 0),
  -- The order in which they were entered, over all jobs and kinds.
  number INTEGER NOT NULL UNIQUE CHECK (number > 0),
  entry TEXT NOT NULL CHECK (json_valid(entry)),
  command TEXT NOT NULL REFERENCES command (id) DEFERRABLE INITIALLY DEFERRED,
  PRIMARY KEY (job, kind, id)
) STRICT;

CREATE TABLE lifting_gear (
  serial TEXT PRIMARY KEY NOT NULL CHECK (length(trim(serial)) > 0),
  component TEXT NOT NULL REFERENCES component (code),
  owner TEXT NOT NULL REFERENCES owner (code),
  -- The location where it is.
  place TEXT NOT NULL REFERENCES location (code),
  command TEXT NOT NULL REFERENCES command (id) DEFERRABLE INITIALLY DEFERRED
) STRICT;

CREATE TABLE "location" (
  code TEXT PRIMARY KEY NOT NULL CHECK (length(trim(code)) > 0),
  name TEXT NOT NULL,
  kind TEXT NOT NULL CHECK (kind IN ('yard', 'rack', 'site', 'container', 'gang', 'pour', 'repair', 'other-job',
    'supplier', 'scrap', 'lost', 'opening'))
) STRICT;

CREATE TABLE look_alike (
  component TEXT NOT NULL REFERENCES component (code),
  other TEXT NOT NULL REFERENCES component (code),
  tell_apart TEXT NOT NULL,
  PRIMARY KEY (component, other),
  CHECK (component < other)
) WITHOUT ROWID, STRICT;

CREATE TABLE loose_line (
  job TEXT NOT NULL,
  pour TEXT NOT NULL,
  position INTEGER NOT NULL CHECK (position > 0),
  side TEXT NOT NULL CHECK (side IN ('A', 'B', 'both')),
  component TEXT NOT NULL REFERENCES component (code),
  quantity INTEGER NOT NULL
    CONSTRAINT loose_quantity_is_a_whole_number_of_pieces CHECK (quantity BETWEEN 1 AND 9007199254740991),
  purpose TEXT NOT NULL,
  PRIMARY KEY (job, pour, position),
  FOREIGN KEY (job, pour) REFERENCES pour (job, code)
) STRICT;

CREATE TABLE migration (
  number INTEGER PRIMARY KEY,
  name TEXT NOT NULL,
  at TEXT NOT NULL
) STRICT;

CREATE TABLE "movement" (
  number INTEGER PRIMARY KEY CHECK (number > 0),
  id TEXT NOT NULL UNIQUE CHECK (length(trim(id)) > 0),
  component TEXT NOT NULL REFERENCES component (code),
  quantity INTEGER NOT NULL
    CONSTRAINT quantity_is_a_whole_number_of_pieces CHECK (quantity BETWEEN 1 AND 9007199254740991),
  owner TEXT NOT NULL REFERENCES owner (code),
  from_location TEXT NOT NULL REFERENCES location (code),
  to_location TEXT NOT NULL REFERENCES location (code),
  condition TEXT NOT NULL CHECK (condition IN ('ready', 'ready-hidden', 'to-clean', 'to-repair', 'quarantine', 'scrapped')),
  condition_after TEXT NOT NULL CHECK (condition_after IN ('ready', 'ready-hidden', 'to-clean', 'to-repair', 'quarantine', 'scrapped')),
  reason TEXT NOT NULL CHECK (reason IN ('opening', 'delivery', 'return', 'transfer', 'hire-on', 'hire-off', 'issue',
    'break-down', 'strip', 'clean', 'repair', 'quarantine', 'scrap', 'lost', 'found', 'owner-swap', 'reversal')),
  at TEXT NOT NULL CONSTRAINT movement_at_is_an_instant CHECK (
  at GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]T[0-9][0-9]:[0-9][0-9]*'
  AND (at GLOB '*Z' OR at GLOB '*[+-][0-9][0-9]:[0-9][0-9]')
  AND substr(at, 1, 10) IS date(substr(at, 1, 10))
  AND unixepoch(at) IS NOT NULL),
  -- The same moment in milliseconds, since texts with different offsets do not sort by time.
  at_ms INTEGER NOT NULL CONSTRAINT at_ms_is_the_moment_of_at CHECK (at_ms / 1000 IS unixepoch(at)),
  who TEXT NOT NULL,
  note_number TEXT,
  remark TEXT,
  basis TEXT CHECK (basis IN ('counted', 'estimated', 'taken-from-list')),
  basis_date TEXT CONSTRAINT basis_date_is_a_date CHECK (basis_date IS NULL OR basis_date IS date(basis_date)),
  reverses TEXT UNIQUE REFERENCES movement (id),
  -- The note, strip ticket, count or repair by which it was booked.
  paper TEXT CHECK (length(trim(paper)) > 0),
  recorded_at TEXT NOT NULL CONSTRAINT recorded_at_is_an_instant CHECK (
  recorded_at GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]T[0-9][0-9]:[0-9][0-9]*'
  AND (recorded_at GLOB '*Z' OR recorded_at GLOB '*[+-][0-9][0-9]:[0-9][0-9]')
  AND substr(recorded_at, 1, 10) IS date(substr(recorded_at, 1, 10))
  AND unixepoch(recorded_at) IS NOT NULL),
  command TEXT NOT NULL REFERENCES command (id) DEFERRABLE INITIALLY DEFERRED,
  CONSTRAINT a_movement_changes_place_or_condition
    CHECK (from_location <> to_location OR condition <> condition_after),
  CONSTRAINT an_opening_says_its_basis
    CHECK ((reason = 'opening') = (basis IS NOT NULL) AND (reason = 'opening') = (basis_date IS NOT NULL)),
  CONSTRAINT a_reversal_names_what_it_takes_back CHECK ((reason = 'reversal') = (reverses IS NOT NULL))
) STRICT;

CREATE TABLE "owner" (
  code TEXT PRIMARY KEY NOT NULL CHECK (length(trim(code)) > 0),
  name TEXT NOT NULL,
  kind TEXT NOT NULL CHECK (kind IN ('ours', 'supplier', 'others')),
  agreement TEXT
) STRICT;

CREATE TABLE pick_setup (
  design TEXT PRIMARY KEY NOT NULL REFERENCES design (code) ON DELETE CASCADE,
  setup TEXT NOT NULL CHECK (json_valid(setup))
) STRICT;

CREATE TABLE placed_gang (
  job TEXT NOT NULL,
  pour TEXT NOT NULL,
  side TEXT NOT NULL,
  position INTEGER NOT NULL CHECK (position > 0),
  design TEXT NOT NULL REFERENCES design (code),
  at_nm INTEGER NOT NULL CHECK (at_nm BETWEEN -9007199254740991 AND 9007199254740991),
  PRIMARY KEY (job, pour, side, position),
  FOREIGN KEY (job, pour, side) REFERENCES pour_side (job, pour, side)
) STRICT;

CREATE TABLE pour (
  job TEXT NOT NULL REFERENCES job (code),
  code TEXT NOT NULL CHECK (length(trim(code)) > 0),
  -- The order in which they were entered.
  position INTEGER NOT NULL CHECK (position > 0),
  name TEXT NOT NULL,
  element TEXT NOT NULL,
  setting_order TEXT NOT NULL CHECK (setting_order IN ('face-first', 'steel-first')),
  finish_at TEXT NOT NULL CONSTRAINT finish_at_is_an_instant CHECK (
  finish_at GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]T[0-9][0-9]:[0-9][0-9]*'
  AND (finish_at GLOB '*Z' OR finish_at GLOB '*[+-][0-9][0-9]:[0-9][0-9]')
  AND substr(finish_at, 1, 10) IS date(substr(finish_at, 1, 10))
  AND unixepoch(finish_at) IS NOT NULL),
  strip_minimum_h REAL NOT NULL CONSTRAINT strip_minimum_h_from_0_to_10000 CHECK (strip_minimum_h BETWEEN 0 AND 10000),
  strip_h REAL NOT NULL CONSTRAINT strip_h_from_0_to_10000 CHECK (strip_h BETWEEN 0 AND 10000),
  tie_component TEXT REFERENCES component (code),
  PRIMARY KEY (job, code),
  UNIQUE (job, position)
) STRICT;

CREATE TABLE pour_after (
  job TEXT NOT NULL,
  pour TEXT NOT NULL,
  position INTEGER NOT NULL CHECK (position > 0),
  earlier_pour TEXT NOT NULL,
  PRIMARY KEY (job, pour, position),
  UNIQUE (job, pour, earlier_pour),
  FOREIGN KEY (job, pour) REFERENCES pour (job, code),
  FOREIGN KEY (job, earlier_pour) REFERENCES pour (job, code) DEFERRABLE INITIALLY DEFERRED,
  CONSTRAINT no_pour_comes_after_itself CHECK (pour <> earlier_pour)
) STRICT;

CREATE TABLE pour_side (
  job TEXT NOT NULL,
  pour TEXT NOT NULL,
  side TEXT NOT NULL CHECK (side IN ('A', 'B')),
  set_at TEXT NOT NULL CONSTRAINT set_at_is_an_instant CHECK (
  set_at GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]T[0-9][0-9]:[0-9][0-9]*'
  AND (set_at GLOB '*Z' OR set_at GLOB '*[+-][0-9][0-9]:[0-9][0-9]')
  AND substr(set_at, 1, 10) IS date(substr(set_at, 1, 10))
  AND unixepoch(set_at) IS NOT NULL),
  set_h REAL NOT NULL CONSTRAINT set_h_from_0_to_10000 CHECK (set_h BETWEEN 0 AND 10000),
  PRIMARY KEY (job, pour, side),
  FOREIGN KEY (job, pour) REFERENCES pour (job, code)
) STRICT;

CREATE TABLE repair_job (
  id TEXT PRIMARY KEY NOT NULL CHECK (length(trim(id)) > 0),
  state TEXT NOT NULL CHECK (state IN ('open', 'done', 'dropped')),
  repair TEXT NOT NULL CHECK (json_valid(repair)),
  version INTEGER NOT NULL CHECK (version > 0),
  command TEXT NOT NULL REFERENCES command (id) DEFERRABLE INITIALLY DEFERRED
) STRICT;

CREATE TABLE rule_version (
  system TEXT NOT NULL CHECK (length(trim(system)) > 0),
  version INTEGER NOT NULL CHECK (version > 0),
  system_name TEXT NOT NULL,
  rules TEXT NOT NULL CHECK (json_valid(rules)),
  PRIMARY KEY (system, version)
) STRICT;

CREATE TABLE signed_figure (
  number INTEGER PRIMARY KEY CHECK (number > 0),
  owner TEXT NOT NULL REFERENCES owner (code),
  component TEXT NOT NULL REFERENCES component (code),
  as_of TEXT NOT NULL CHECK (as_of IS date(as_of)),
  whose TEXT NOT NULL CHECK (whose IN ('owner', 'ours', 'agreed')),
  quantity INTEGER NOT NULL CHECK (quantity BETWEEN 0 AND 9007199254740991),
  signed_by TEXT NOT NULL CHECK (length(trim(signed_by)) > 0),
  paper TEXT,
  remark TEXT,
  command TEXT NOT NULL REFERENCES command (id) DEFERRABLE INITIALLY DEFERRED
) STRICT;

CREATE TABLE stock_count (
  id TEXT PRIMARY KEY NOT NULL CHECK (length(trim(id)) > 0),
  number INTEGER NOT NULL UNIQUE CHECK (number > 0),
  state TEXT NOT NULL CHECK (state IN ('open', 'booked', 'dropped')),
  stock_count TEXT NOT NULL CHECK (json_valid(stock_count)),
  result TEXT CHECK (json_valid(result)),
  command TEXT NOT NULL REFERENCES command (id) DEFERRABLE INITIALLY DEFERRED,
  CHECK ((state = 'booked') = (result IS NOT NULL))
) STRICT;

CREATE TABLE stock_key (
  number INTEGER PRIMARY KEY,
  component TEXT NOT NULL REFERENCES component (code),
  owner TEXT NOT NULL REFERENCES owner (code),
  location TEXT NOT NULL REFERENCES location (code),
  condition TEXT NOT NULL CHECK (condition IN ('ready', 'ready-hidden', 'to-clean', 'to-repair', 'quarantine', 'scrapped')),
  UNIQUE (component, owner, location, condition)
) STRICT;

CREATE TABLE stock_level (
  stock_key INTEGER NOT NULL REFERENCES stock_key (number),
  day INTEGER NOT NULL,
  quantity INTEGER NOT NULL CHECK (quantity BETWEEN -9007199254740991 AND 9007199254740991),
  PRIMARY KEY (stock_key, day)
) WITHOUT ROWID, STRICT;

CREATE TABLE stored_plan (
  number INTEGER PRIMARY KEY CHECK (number > 0),
  id TEXT NOT NULL UNIQUE CHECK (length(trim(id)) > 0),
  job TEXT NOT NULL REFERENCES job (code),
  made_at TEXT NOT NULL CONSTRAINT made_at_is_an_instant CHECK (
  made_at GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]T[0-9][0-9]:[0-9][0-9]*'
  AND (made_at GLOB '*Z' OR made_at GLOB '*[+-][0-9][0-9]:[0-9][0-9]')
  AND substr(made_at, 1, 10) IS date(substr(made_at, 1, 10))
  AND unixepoch(made_at) IS NOT NULL),
  input TEXT NOT NULL CHECK (json_valid(input)),
  answer TEXT NOT NULL CHECK (json_valid(answer))
) STRICT;

CREATE TABLE strip_entry (
  ticket TEXT NOT NULL REFERENCES strip_ticket (id),
  number INTEGER NOT NULL CHECK (number > 0),
  id TEXT NOT NULL UNIQUE CHECK (length(trim(id)) > 0),
  entry TEXT NOT NULL CHECK (json_valid(entry)),
  command TEXT NOT NULL REFERENCES command (id) DEFERRABLE INITIALLY DEFERRED,
  PRIMARY KEY (ticket, number)
) STRICT;

CREATE TABLE strip_ticket (
  id TEXT PRIMARY KEY NOT NULL CHECK (length(trim(id)) > 0),
  number INTEGER NOT NULL UNIQUE CHECK (number > 0),
  job TEXT NOT NULL REFERENCES job (code),
  pour TEXT NOT NULL,
  state TEXT NOT NULL CHECK (state IN ('open', 'booked', 'dropped')),
  ticket TEXT NOT NULL CHECK (json_valid(ticket)),
  -- What was booked, line by line; NULL until then.
  result TEXT CHECK (json_valid(result)),
  -- The earlier ticket whose late finds this one counts.
  follows TEXT REFERENCES strip_ticket (id),
  command TEXT NOT NULL REFERENCES command (id) DEFERRABLE INITIALLY DEFERRED,
  CHECK ((state = 'booked') = (result IS NOT NULL))
) STRICT;

CREATE TABLE truck (
  code TEXT PRIMARY KEY NOT NULL CHECK (length(trim(code)) > 0),
  truck TEXT NOT NULL CHECK (json_valid(truck))
) STRICT;

CREATE TABLE truck_load (
  id TEXT PRIMARY KEY NOT NULL CHECK (length(trim(id)) > 0),
  -- The note it carries; NULL for a load without one.
  paper TEXT,
  truck_load TEXT NOT NULL CHECK (json_valid(truck_load)),
  version INTEGER NOT NULL CHECK (version > 0),
  command TEXT NOT NULL REFERENCES command (id) DEFERRABLE INITIALLY DEFERRED
) STRICT;

CREATE TABLE yard_note (
  id TEXT PRIMARY KEY NOT NULL CHECK (length(trim(id)) > 0),
  kind TEXT NOT NULL CHECK (kind IN ('delivery', 'return', 'transfer', 'issue', 'hire-on', 'hire-off')),
  number TEXT NOT NULL CHECK (length(trim(number)) > 0),
  state TEXT NOT NULL CHECK (state IN ('draft', 'booked', 'dropped', 'reversed')),
  -- When it is due; NULL where nobody said.
  expected_at TEXT CHECK (expected_at IS NULL OR (
  expected_at GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]T[0-9][0-9]:[0-9][0-9]*'
  AND (expected_at GLOB '*Z' OR expected_at GLOB '*[+-][0-9][0-9]:[0-9][0-9]')
  AND substr(expected_at, 1, 10) IS date(substr(expected_at, 1, 10))
  AND unixepoch(expected_at) IS NOT NULL)),
  note TEXT NOT NULL CHECK (json_valid(note)),
  -- What the other end counted, line by line; told after the booking, once.
  counted_there TEXT CHECK (json_valid(counted_there)),
  -- Rises with every edit, so that two people do not write over each other.
  version INTEGER NOT NULL CHECK (version > 0),
  command TEXT NOT NULL REFERENCES command (id) DEFERRABLE INITIALLY DEFERRED,
  UNIQUE (kind, number)
) STRICT;

CREATE TABLE yard_setting (
  name TEXT PRIMARY KEY NOT NULL CHECK (length(trim(name)) > 0),
  setting TEXT NOT NULL CHECK (json_valid(setting))
) STRICT;

CREATE TRIGGER a_record_of_the_job_is_never_changed BEFORE UPDATE ON job_entry
WHEN OLD.kind IN ('telling', 'day-report', 'sheet-print')
BEGIN SELECT RAISE(ABORT, 'What was told, how a day ended and what was printed is never changed.'); END;

CREATE TRIGGER a_record_of_the_job_is_never_removed BEFORE DELETE ON job_entry
WHEN OLD.kind IN ('telling', 'day-report', 'sheet-print')
BEGIN SELECT RAISE(ABORT, 'What was told, how a day ended and what was printed is never removed.'); END;

CREATE TRIGGER attachment_is_never_changed BEFORE UPDATE ON attachment
BEGIN SELECT RAISE(ABORT, 'An attachment is never changed.'); END;

CREATE TRIGGER attachment_is_never_removed BEFORE DELETE ON attachment
BEGIN SELECT RAISE(ABORT, 'An attachment is never removed.'); END;

CREATE TRIGGER command_is_never_changed BEFORE UPDATE ON command
BEGIN SELECT RAISE(ABORT, 'A command once done is never changed.'); END;

CREATE TRIGGER command_is_never_removed BEFORE DELETE ON command
BEGIN SELECT RAISE(ABORT, 'A command once done is never removed.'); END;

CREATE TRIGGER container_is_never_changed BEFORE UPDATE ON container
BEGIN SELECT RAISE(ABORT, 'A container is never changed.'); END;

CREATE TRIGGER container_is_never_removed BEFORE DELETE ON container
BEGIN SELECT RAISE(ABORT, 'A container is never removed.'); END;

CREATE TRIGGER container_step_is_never_changed BEFORE UPDATE ON container_step
BEGIN SELECT RAISE(ABORT, 'A step of a container is never changed.'); END;

CREATE TRIGGER container_step_is_never_removed BEFORE DELETE ON container_step
BEGIN SELECT RAISE(ABORT, 'A step of a container is never removed.'); END;

CREATE TRIGGER count_entry_is_never_changed BEFORE UPDATE ON count_entry
BEGIN SELECT RAISE(ABORT, 'What was entered on a count is never changed.'); END;

CREATE TRIGGER count_entry_is_never_removed BEFORE DELETE ON count_entry
BEGIN SELECT RAISE(ABORT, 'What was entered on a count is never removed.'); END;

CREATE TRIGGER design_revision_is_never_changed BEFORE UPDATE ON design_revision
BEGIN SELECT RAISE(ABORT, 'A saved state of a design is never changed: a change is a new one.'); END;

CREATE TRIGGER design_revision_is_never_removed BEFORE DELETE ON design_revision
BEGIN SELECT RAISE(ABORT, 'A saved state of a design is never removed.'); END;

CREATE TRIGGER gang_is_never_changed BEFORE UPDATE ON gang
BEGIN SELECT RAISE(ABORT, 'A gang is never changed.'); END;

CREATE TRIGGER gang_is_never_removed BEFORE DELETE ON gang
BEGIN SELECT RAISE(ABORT, 'A gang is never removed.'); END;

CREATE TRIGGER gang_step_is_never_changed BEFORE UPDATE ON gang_step
BEGIN SELECT RAISE(ABORT, 'A step of a gang is never changed.'); END;

CREATE TRIGGER gang_step_is_never_removed BEFORE DELETE ON gang_step
BEGIN SELECT RAISE(ABORT, 'A step of a gang is never removed.'); END;

CREATE TRIGGER gear_inspection_is_never_changed BEFORE UPDATE ON gear_inspection
BEGIN SELECT RAISE(ABORT, 'An inspection is never changed.'); END;

CREATE TRIGGER gear_inspection_is_never_removed BEFORE DELETE ON gear_inspection
BEGIN SELECT RAISE(ABORT, 'An inspection is never removed.'); END;

CREATE TRIGGER location_in_use_keeps_its_kind BEFORE UPDATE OF kind ON location
WHEN OLD.kind <> NEW.kind AND EXISTS (
  SELECT 1 FROM movement WHERE from_location = OLD.code OR to_location = OLD.code
)
BEGIN SELECT RAISE(ABORT, 'A location with movements keeps its kind.'); END;

CREATE TRIGGER movement_is_never_changed BEFORE UPDATE ON movement
BEGIN SELECT RAISE(ABORT, 'A movement is never changed: a correction is a reversal.'); END;

CREATE TRIGGER movement_is_never_removed BEFORE DELETE ON movement
BEGIN SELECT RAISE(ABORT, 'A movement is never removed: a correction is a reversal.'); END;

CREATE TRIGGER movement_reversal_mirrors BEFORE INSERT ON movement WHEN NEW.reverses IS NOT NULL
BEGIN
  SELECT RAISE(ABORT, 'A reversal is the opposite of a movement that is not a reversal itself.')
  WHERE NOT EXISTS (
    SELECT 1 FROM movement m
    WHERE m.id = NEW.reverses AND m.reverses IS NULL AND m.component = NEW.component
      AND m.owner = NEW.owner AND m.quantity = NEW.quantity
      AND m.from_location = NEW.to_location AND m.to_location = NEW.from_location
      AND m.condition = NEW.condition_after AND m.condition_after = NEW.condition
      AND m.at_ms <= NEW.at_ms
  );
END;

CREATE TRIGGER repair_job_once_done_stays BEFORE UPDATE ON repair_job WHEN OLD.state <> 'open'
BEGIN SELECT RAISE(ABORT, 'A repair once done stays as it is.'); END;

CREATE TRIGGER rule_version_is_never_changed BEFORE UPDATE ON rule_version
BEGIN SELECT RAISE(ABORT, 'A version of rule tables is never changed: a change is a new version.'); END;

CREATE TRIGGER rule_version_is_never_removed BEFORE DELETE ON rule_version
BEGIN SELECT RAISE(ABORT, 'A version of rule tables is never removed.'); END;

CREATE TRIGGER signed_figure_is_never_changed BEFORE UPDATE ON signed_figure
BEGIN SELECT RAISE(ABORT, 'A signed figure is never changed.'); END;

CREATE TRIGGER signed_figure_is_never_removed BEFORE DELETE ON signed_figure
BEGIN SELECT RAISE(ABORT, 'A signed figure is never removed.'); END;

CREATE TRIGGER stock_count_once_booked_stays BEFORE UPDATE ON stock_count WHEN OLD.state <> 'open'
BEGIN SELECT RAISE(ABORT, 'A count once booked stays as it is.'); END;

CREATE TRIGGER strip_entry_is_never_changed BEFORE UPDATE ON strip_entry
BEGIN SELECT RAISE(ABORT, 'What was counted on a ticket is never changed.'); END;

CREATE TRIGGER strip_entry_is_never_removed BEFORE DELETE ON strip_entry
BEGIN SELECT RAISE(ABORT, 'What was counted on a ticket is never removed.'); END;

CREATE TRIGGER strip_ticket_once_booked_stays BEFORE UPDATE ON strip_ticket WHEN OLD.state <> 'open'
BEGIN SELECT RAISE(ABORT, 'A strip ticket once booked stays as it is.'); END;

CREATE TRIGGER yard_note_is_never_removed BEFORE DELETE ON yard_note
BEGIN SELECT RAISE(ABORT, 'A note is never removed: it is dropped or reversed.'); END;

CREATE TRIGGER yard_note_once_booked_stays BEFORE UPDATE ON yard_note
WHEN OLD.state <> 'draft' AND NOT (OLD.state = 'booked' AND OLD.note = NEW.note AND OLD.number = NEW.number
  AND NEW.state IN ('booked', 'reversed')
  AND (OLD.counted_there IS NULL OR OLD.counted_there IS NEW.counted_there))
BEGIN SELECT RAISE(ABORT, 'A note once booked is only reversed.'); END;
