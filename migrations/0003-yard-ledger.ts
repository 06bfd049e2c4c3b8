// Locations, owners, reasons and conditions get further kinds, movements name the paper they were booked by, and
// beside the ledger stand levels of stock by day, so that a sum does not read all of it.
import type { Migration } from '../core/book/migration.ts';

const isText = (column: string): string => `length(trim(${column})) > 0`;

const isDate = (column: string): string => `${column} IS date(${column})`;

const isInstant = (column: string): string => `
  ${column} GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]T[0-9][0-9]:[0-9][0-9]*'
  AND (${column} GLOB '*Z' OR ${column} GLOB '*[+-][0-9][0-9]:[0-9][0-9]')
  AND substr(${column}, 1, 10) IS date(substr(${column}, 1, 10))
  AND unixepoch(${column}) IS NOT NULL`;

const greatest = 9_007_199_254_740_991;

const conditions = `('ready', 'ready-hidden', 'to-clean', 'to-repair', 'quarantine', 'scrapped')`;

const places = `
CREATE TABLE location_next (
  code TEXT PRIMARY KEY NOT NULL CHECK (${isText('code')}),
  name TEXT NOT NULL,
  kind TEXT NOT NULL CHECK (kind IN ('yard', 'rack', 'site', 'container', 'gang', 'pour', 'repair', 'other-job',
    'supplier', 'scrap', 'lost', 'opening'))
) STRICT;
INSERT INTO location_next SELECT code, name, kind FROM location;

CREATE TABLE owner_next (
  code TEXT PRIMARY KEY NOT NULL CHECK (${isText('code')}),
  name TEXT NOT NULL,
  kind TEXT NOT NULL CHECK (kind IN ('ours', 'supplier', 'others')),
  agreement TEXT
) STRICT;
INSERT INTO owner_next SELECT code, name, kind, agreement FROM owner;

ALTER TABLE component ADD COLUMN value_cents INTEGER CHECK (value_cents BETWEEN 0 AND ${greatest});
`;

const ledger = `
CREATE TABLE movement_next (
  number INTEGER PRIMARY KEY CHECK (number > 0),
  id TEXT NOT NULL UNIQUE CHECK (${isText('id')}),
  component TEXT NOT NULL REFERENCES component (code),
  quantity INTEGER NOT NULL
    CONSTRAINT quantity_is_a_whole_number_of_pieces CHECK (quantity BETWEEN 1 AND ${greatest}),
  owner TEXT NOT NULL REFERENCES owner (code),
  from_location TEXT NOT NULL REFERENCES location (code),
  to_location TEXT NOT NULL REFERENCES location (code),
  condition TEXT NOT NULL CHECK (condition IN ${conditions}),
  condition_after TEXT NOT NULL CHECK (condition_after IN ${conditions}),
  reason TEXT NOT NULL CHECK (reason IN ('opening', 'delivery', 'return', 'transfer', 'hire-on', 'hire-off', 'issue',
    'break-down', 'strip', 'clean', 'repair', 'quarantine', 'scrap', 'lost', 'found', 'owner-swap', 'reversal')),
  at TEXT NOT NULL CONSTRAINT movement_at_is_an_instant CHECK (${isInstant('at')}),
  -- The same moment in milliseconds, since texts with different offsets do not sort by time.
  at_ms INTEGER NOT NULL CONSTRAINT at_ms_is_the_moment_of_at CHECK (at_ms / 1000 IS unixepoch(at)),
  who TEXT NOT NULL,
  note_number TEXT,
  remark TEXT,
  basis TEXT CHECK (basis IN ('counted', 'estimated', 'taken-from-list')),
  basis_date TEXT CONSTRAINT basis_date_is_a_date CHECK (basis_date IS NULL OR ${isDate('basis_date')}),
  reverses TEXT UNIQUE REFERENCES movement (id),
  -- The note, strip ticket, count or repair by which it was booked.
  paper TEXT CHECK (${isText('paper')}),
  recorded_at TEXT NOT NULL CONSTRAINT recorded_at_is_an_instant CHECK (${isInstant('recorded_at')}),
  command TEXT NOT NULL REFERENCES command (id) DEFERRABLE INITIALLY DEFERRED,
  CONSTRAINT a_movement_changes_place_or_condition
    CHECK (from_location <> to_location OR condition <> condition_after),
  CONSTRAINT an_opening_says_its_basis
    CHECK ((reason = 'opening') = (basis IS NOT NULL) AND (reason = 'opening') = (basis_date IS NOT NULL)),
  CONSTRAINT a_reversal_names_what_it_takes_back CHECK ((reason = 'reversal') = (reverses IS NOT NULL))
) STRICT;
INSERT INTO movement_next
SELECT number, id, component, quantity, owner, from_location, to_location, condition, condition_after, reason, at,
  at_ms, who, note_number, remark, basis, basis_date, reverses, NULL, recorded_at, command
FROM movement;
DROP TABLE movement;
DROP TABLE location;
DROP TABLE owner;
ALTER TABLE location_next RENAME TO location;
ALTER TABLE owner_next RENAME TO owner;
ALTER TABLE movement_next RENAME TO movement;

-- Every index ends in the number of the ledger, by which pages of it are turned. Nearly all pieces are ready, so that
-- only the other conditions are worth one.
CREATE INDEX movement_component ON movement (component);
CREATE INDEX movement_component_time ON movement (component, at_ms);
CREATE INDEX movement_owner ON movement (owner);
CREATE INDEX movement_from ON movement (from_location);
CREATE INDEX movement_to ON movement (to_location);
CREATE INDEX movement_reason ON movement (reason);
CREATE INDEX movement_condition ON movement (condition) WHERE condition <> 'ready';
CREATE INDEX movement_condition_after ON movement (condition_after) WHERE condition_after <> 'ready';
CREATE INDEX movement_time ON movement (at_ms);
CREATE INDEX movement_basis ON movement (component, owner) WHERE basis IS NOT NULL;
CREATE INDEX movement_paper ON movement (paper) WHERE paper IS NOT NULL;
-- A command is entered after its movements, and SQLite then looks for the rows that wait for it.
CREATE INDEX movement_command ON movement (command);

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
CREATE TRIGGER location_in_use_keeps_its_kind BEFORE UPDATE OF kind ON location
WHEN OLD.kind <> NEW.kind AND EXISTS (
  SELECT 1 FROM movement WHERE from_location = OLD.code OR to_location = OLD.code
)
BEGIN SELECT RAISE(ABORT, 'A location with movements keeps its kind.'); END;
`;

const levels = `
-- What a quantity is kept of: a component of an owner at a location in a condition.
CREATE TABLE stock_key (
  number INTEGER PRIMARY KEY,
  component TEXT NOT NULL REFERENCES component (code),
  owner TEXT NOT NULL REFERENCES owner (code),
  location TEXT NOT NULL REFERENCES location (code),
  condition TEXT NOT NULL CHECK (condition IN ${conditions}),
  UNIQUE (component, owner, location, condition)
) STRICT;

-- The quantity at the end of every day of the calendar of Greenwich on which it changed; a day is a whole number of
-- days since 1970. Kept by the same commands as the movements, and held against them by every check of the book.
CREATE TABLE stock_level (
  stock_key INTEGER NOT NULL REFERENCES stock_key (number),
  day INTEGER NOT NULL,
  quantity INTEGER NOT NULL CHECK (quantity BETWEEN -${greatest} AND ${greatest}),
  PRIMARY KEY (stock_key, day)
) WITHOUT ROWID, STRICT;

INSERT INTO stock_key (component, owner, location, condition)
SELECT component, owner, to_location, condition_after FROM movement
UNION SELECT component, owner, from_location, condition FROM movement
ORDER BY 1, 2, 3, 4;
INSERT INTO stock_level (stock_key, day, quantity)
WITH entry AS (
  SELECT component, owner, to_location AS location, condition_after AS condition, at_ms, quantity FROM movement
  UNION ALL SELECT component, owner, from_location, condition, at_ms, -quantity FROM movement
), changed AS (
  SELECT k.number AS stock_key, (e.at_ms - ((e.at_ms % 86400000) + 86400000) % 86400000) / 86400000 AS day,
    sum(e.quantity) AS quantity
  FROM entry e JOIN stock_key k USING (component, owner, location, condition)
  GROUP BY 1, 2
)
SELECT stock_key, day, sum(quantity) OVER (PARTITION BY stock_key ORDER BY day) FROM changed;
`;

export const yardLedger: Migration = {
  number: 3,
  name: 'yard ledger',
  sql: [places, ledger, levels].join('\n'),
};
