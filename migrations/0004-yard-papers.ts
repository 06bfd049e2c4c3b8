// The yard's papers: notes of deliveries and returns, strip tickets, counts, signed figures and repairs, each with
// what was entered on it; gangs and containers as places that hold pieces, with every step they took; and lifting
// gear by serial number.
import type { Migration } from '../core/book/migration.ts';

const isText = (column: string): string => `length(trim(${column})) > 0`;

const isDate = (column: string): string => `${column} IS date(${column})`;

const isInstant = (column: string): string => `
  ${column} GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]T[0-9][0-9]:[0-9][0-9]*'
  AND (${column} GLOB '*Z' OR ${column} GLOB '*[+-][0-9][0-9]:[0-9][0-9]')
  AND substr(${column}, 1, 10) IS date(substr(${column}, 1, 10))
  AND unixepoch(${column}) IS NOT NULL`;

const greatest = 9_007_199_254_740_991;

/** Made by the command that wrote the row. */
const byCommand = 'command TEXT NOT NULL REFERENCES command (id) DEFERRABLE INITIALLY DEFERRED';

/** Rows are only ever added. */
const onlyAdded = (table: string, what: string): string => `
CREATE TRIGGER ${table}_is_never_changed BEFORE UPDATE ON ${table}
BEGIN SELECT RAISE(ABORT, '${what} is never changed.'); END;
CREATE TRIGGER ${table}_is_never_removed BEFORE DELETE ON ${table}
BEGIN SELECT RAISE(ABORT, '${what} is never removed.'); END;
`;

const papers = `
CREATE TABLE yard_note (
  id TEXT PRIMARY KEY NOT NULL CHECK (${isText('id')}),
  kind TEXT NOT NULL CHECK (kind IN ('delivery', 'return', 'transfer', 'issue', 'hire-on', 'hire-off')),
  number TEXT NOT NULL CHECK (${isText('number')}),
  state TEXT NOT NULL CHECK (state IN ('draft', 'booked', 'dropped', 'reversed')),
  -- When it is due; NULL where nobody said.
  expected_at TEXT CHECK (expected_at IS NULL OR (${isInstant('expected_at')})),
  note TEXT NOT NULL CHECK (json_valid(note)),
  -- What the other end counted, line by line; told after the booking, once.
  counted_there TEXT CHECK (json_valid(counted_there)),
  -- Rises with every edit, so that two people do not write over each other.
  version INTEGER NOT NULL CHECK (version > 0),
  ${byCommand},
  UNIQUE (kind, number)
) STRICT;
CREATE TRIGGER yard_note_once_booked_stays BEFORE UPDATE ON yard_note
WHEN OLD.state <> 'draft' AND NOT (OLD.state = 'booked' AND OLD.note = NEW.note AND OLD.number = NEW.number
  AND NEW.state IN ('booked', 'reversed')
  AND (OLD.counted_there IS NULL OR OLD.counted_there IS NEW.counted_there))
BEGIN SELECT RAISE(ABORT, 'A note once booked is only reversed.'); END;
CREATE TRIGGER yard_note_is_never_removed BEFORE DELETE ON yard_note
BEGIN SELECT RAISE(ABORT, 'A note is never removed: it is dropped or reversed.'); END;

CREATE TABLE attachment (
  id TEXT PRIMARY KEY NOT NULL CHECK (${isText('id')}),
  paper TEXT NOT NULL CHECK (${isText('paper')}),
  attachment TEXT NOT NULL CHECK (json_valid(attachment)),
  ${byCommand}
) STRICT;
CREATE INDEX attachment_paper ON attachment (paper);
${onlyAdded('attachment', 'An attachment')}

CREATE TABLE signed_figure (
  number INTEGER PRIMARY KEY CHECK (number > 0),
  owner TEXT NOT NULL REFERENCES owner (code),
  component TEXT NOT NULL REFERENCES component (code),
  as_of TEXT NOT NULL CHECK (${isDate('as_of')}),
  whose TEXT NOT NULL CHECK (whose IN ('owner', 'ours', 'agreed')),
  quantity INTEGER NOT NULL CHECK (quantity BETWEEN 0 AND ${greatest}),
  signed_by TEXT NOT NULL CHECK (${isText('signed_by')}),
  paper TEXT,
  remark TEXT,
  ${byCommand}
) STRICT;
CREATE INDEX signed_figure_of ON signed_figure (owner, component, number);
${onlyAdded('signed_figure', 'A signed figure')}

CREATE TABLE repair_job (
  id TEXT PRIMARY KEY NOT NULL CHECK (${isText('id')}),
  state TEXT NOT NULL CHECK (state IN ('open', 'done', 'dropped')),
  repair TEXT NOT NULL CHECK (json_valid(repair)),
  version INTEGER NOT NULL CHECK (version > 0),
  ${byCommand}
) STRICT;
CREATE TRIGGER repair_job_once_done_stays BEFORE UPDATE ON repair_job WHEN OLD.state <> 'open'
BEGIN SELECT RAISE(ABORT, 'A repair once done stays as it is.'); END;

CREATE TABLE truck (
  code TEXT PRIMARY KEY NOT NULL CHECK (${isText('code')}),
  truck TEXT NOT NULL CHECK (json_valid(truck))
) STRICT;

CREATE TABLE truck_load (
  id TEXT PRIMARY KEY NOT NULL CHECK (${isText('id')}),
  -- The note it carries; NULL for a load without one.
  paper TEXT,
  truck_load TEXT NOT NULL CHECK (json_valid(truck_load)),
  version INTEGER NOT NULL CHECK (version > 0),
  ${byCommand}
) STRICT;

CREATE TABLE yard_setting (
  name TEXT PRIMARY KEY NOT NULL CHECK (${isText('name')}),
  setting TEXT NOT NULL CHECK (json_valid(setting))
) STRICT;

CREATE TABLE look_alike (
  component TEXT NOT NULL REFERENCES component (code),
  other TEXT NOT NULL REFERENCES component (code),
  tell_apart TEXT NOT NULL,
  PRIMARY KEY (component, other),
  CHECK (component < other)
) WITHOUT ROWID, STRICT;
`;

const things = `
CREATE TABLE gang (
  -- Its tag, and the location that holds its pieces.
  code TEXT PRIMARY KEY NOT NULL REFERENCES location (code),
  ${byCommand}
) STRICT;
CREATE TABLE gang_step (
  gang TEXT NOT NULL REFERENCES gang (code),
  number INTEGER NOT NULL CHECK (number > 0),
  state TEXT NOT NULL CHECK (state IN ('assembled', 'standing', 'stripped', 'standing-by', 'broken-down')),
  at TEXT NOT NULL CHECK (${isInstant('at')}),
  at_ms INTEGER NOT NULL,
  step TEXT NOT NULL CHECK (json_valid(step)),
  ${byCommand},
  PRIMARY KEY (gang, number)
) STRICT;
${onlyAdded('gang', 'A gang')}
${onlyAdded('gang_step', 'A step of a gang')}

CREATE TABLE container (
  code TEXT PRIMARY KEY NOT NULL REFERENCES location (code),
  -- Which piece it is itself, and whose.
  component TEXT NOT NULL REFERENCES component (code),
  owner TEXT NOT NULL REFERENCES owner (code),
  ${byCommand}
) STRICT;
CREATE TABLE container_step (
  container TEXT NOT NULL REFERENCES container (code),
  number INTEGER NOT NULL CHECK (number > 0),
  at TEXT NOT NULL CHECK (${isInstant('at')}),
  at_ms INTEGER NOT NULL,
  step TEXT NOT NULL CHECK (json_valid(step)),
  ${byCommand},
  PRIMARY KEY (container, number)
) STRICT;
${onlyAdded('container', 'A container')}
${onlyAdded('container_step', 'A step of a container')}

CREATE TABLE lifting_gear (
  serial TEXT PRIMARY KEY NOT NULL CHECK (${isText('serial')}),
  component TEXT NOT NULL REFERENCES component (code),
  owner TEXT NOT NULL REFERENCES owner (code),
  -- The location where it is.
  place TEXT NOT NULL REFERENCES location (code),
  ${byCommand}
) STRICT;
CREATE TABLE gear_inspection (
  serial TEXT NOT NULL REFERENCES lifting_gear (serial),
  number INTEGER NOT NULL CHECK (number > 0),
  inspection TEXT NOT NULL CHECK (json_valid(inspection)),
  ${byCommand},
  PRIMARY KEY (serial, number)
) STRICT;
${onlyAdded('gear_inspection', 'An inspection')}
`;

const counting = `
CREATE TABLE strip_ticket (
  id TEXT PRIMARY KEY NOT NULL CHECK (${isText('id')}),
  number INTEGER NOT NULL UNIQUE CHECK (number > 0),
  job TEXT NOT NULL REFERENCES job (code),
  pour TEXT NOT NULL,
  state TEXT NOT NULL CHECK (state IN ('open', 'booked', 'dropped')),
  ticket TEXT NOT NULL CHECK (json_valid(ticket)),
  -- What was booked, line by line; NULL until then.
  result TEXT CHECK (json_valid(result)),
  -- The earlier ticket whose late finds this one counts.
  follows TEXT REFERENCES strip_ticket (id),
  ${byCommand},
  CHECK ((state = 'booked') = (result IS NOT NULL))
) STRICT;
CREATE TRIGGER strip_ticket_once_booked_stays BEFORE UPDATE ON strip_ticket WHEN OLD.state <> 'open'
BEGIN SELECT RAISE(ABORT, 'A strip ticket once booked stays as it is.'); END;
CREATE TABLE strip_entry (
  ticket TEXT NOT NULL REFERENCES strip_ticket (id),
  number INTEGER NOT NULL CHECK (number > 0),
  id TEXT NOT NULL UNIQUE CHECK (${isText('id')}),
  entry TEXT NOT NULL CHECK (json_valid(entry)),
  ${byCommand},
  PRIMARY KEY (ticket, number)
) STRICT;
${onlyAdded('strip_entry', 'What was counted on a ticket')}

CREATE TABLE stock_count (
  id TEXT PRIMARY KEY NOT NULL CHECK (${isText('id')}),
  number INTEGER NOT NULL UNIQUE CHECK (number > 0),
  state TEXT NOT NULL CHECK (state IN ('open', 'booked', 'dropped')),
  stock_count TEXT NOT NULL CHECK (json_valid(stock_count)),
  result TEXT CHECK (json_valid(result)),
  ${byCommand},
  CHECK ((state = 'booked') = (result IS NOT NULL))
) STRICT;
CREATE TRIGGER stock_count_once_booked_stays BEFORE UPDATE ON stock_count WHEN OLD.state <> 'open'
BEGIN SELECT RAISE(ABORT, 'A count once booked stays as it is.'); END;
CREATE TABLE count_entry (
  stock_count TEXT NOT NULL REFERENCES stock_count (id),
  number INTEGER NOT NULL CHECK (number > 0),
  id TEXT NOT NULL UNIQUE CHECK (${isText('id')}),
  entry TEXT NOT NULL CHECK (json_valid(entry)),
  ${byCommand},
  PRIMARY KEY (stock_count, number)
) STRICT;
${onlyAdded('count_entry', 'What was entered on a count')}
`;

export const yardPapers: Migration = {
  number: 4,
  name: 'yard papers',
  sql: [papers, things, counting].join('\n'),
};
