// Every saved state of a design is kept beside the one in force; cranes with their charts and how each gang is
// picked; of a component the pressure a panel may take, upright and on its side, and whether a corner or strip
// lets a closed box shrink.
import type { Migration } from '../core/book/migration.ts';

const greatest = 9_007_199_254_740_991;

const components = `
ALTER TABLE component ADD COLUMN pressure_pa INTEGER CHECK (pressure_pa BETWEEN 1 AND ${greatest});
ALTER TABLE component ADD COLUMN pressure_on_side_pa INTEGER
  CHECK (pressure_on_side_pa BETWEEN 1 AND ${greatest});
ALTER TABLE component ADD COLUMN can_shrink INTEGER NOT NULL DEFAULT 0 CHECK (can_shrink IN (0, 1));
`;

const revisions = `
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
CREATE TRIGGER design_revision_is_never_changed BEFORE UPDATE ON design_revision
BEGIN SELECT RAISE(ABORT, 'A saved state of a design is never changed: a change is a new one.'); END;
CREATE TRIGGER design_revision_is_never_removed BEFORE DELETE ON design_revision
BEGIN SELECT RAISE(ABORT, 'A saved state of a design is never removed.'); END;
INSERT INTO design_revision
SELECT code, 1, name, system, revision, hand, geometry, assemble_h, break_down_h,
  coalesce((SELECT max(version) FROM rule_version WHERE rule_version.system = design.system), 0), NULL
FROM design;
`;

const picks = `
CREATE TABLE crane (
  code TEXT PRIMARY KEY NOT NULL CHECK (length(trim(code)) > 0),
  crane TEXT NOT NULL CHECK (json_valid(crane))
) STRICT;

CREATE TABLE pick_setup (
  design TEXT PRIMARY KEY NOT NULL REFERENCES design (code) ON DELETE CASCADE,
  setup TEXT NOT NULL CHECK (json_valid(setup))
) STRICT;
`;

export const revisionsAndPicks: Migration = {
  number: 2,
  name: 'revisions and picks',
  sql: [components, revisions, picks].join('\n'),
};
