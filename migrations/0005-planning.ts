// What people decide and enter around a plan: settings, exceptions of the calendar, bookings of the crane, facts of
// pours, what was told, what is fixed, pieces to come, changes carried out, kept what-ifs, days ended, sheets printed.
// Each is a text of its own shape by kind and id; three of the kinds are records that nobody changes.
import type { Migration } from '../core/book/migration.ts';

const entries = `
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
CREATE TRIGGER a_record_of_the_job_is_never_changed BEFORE UPDATE ON job_entry
WHEN OLD.kind IN ('telling', 'day-report', 'sheet-print')
BEGIN SELECT RAISE(ABORT, 'What was told, how a day ended and what was printed is never changed.'); END;
CREATE TRIGGER a_record_of_the_job_is_never_removed BEFORE DELETE ON job_entry
WHEN OLD.kind IN ('telling', 'day-report', 'sheet-print')
BEGIN SELECT RAISE(ABORT, 'What was told, how a day ended and what was printed is never removed.'); END;
`;

export const planning: Migration = { number: 5, name: 'planning', sql: entries };
