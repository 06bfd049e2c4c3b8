// Whether the saved states of every design run 1, 2, 3 ... without a gap, and the last one is the design in force.
import { sql } from 'kysely';
import type { Kysely } from 'kysely';
import type { BookProblem } from './book.ts';
import type { BookTables } from './tables.ts';

export async function checkRevisions(db: Kysely<BookTables>): Promise<readonly BookProblem[]> {
  const gaps = await sql<{ design: string; last: number; rows: number }>`
    select design, max(number) as last, count(*) as rows from design_revision
    group by design having max(number) <> count(*) order by design limit 20
  `.execute(db);
  const unsaved = await sql<{ code: string }>`
    select code from design d where not exists (
      select 1 from design_revision r where r.design = d.code
        and r.number = (select max(number) from design_revision where design = d.code)
        and r.name = d.name and r.system = d.system and r.revision = d.revision and r.hand = d.hand
        and r.geometry = d.geometry and r.assemble_h = d.assemble_h and r.break_down_h = d.break_down_h
    ) order by code limit 20
  `.execute(db);
  return [
    ...gaps.rows.map(({ design, last, rows }) => ({
      check: 'integrity' as const,
      message: `Design ${design} has the saved state ${last} as its last, and ${rows} are there: some were taken out.`,
    })),
    ...unsaved.rows.map(({ code }) => ({
      check: 'integrity' as const,
      message: `Design ${code} is not as it was last saved.`,
    })),
  ];
}
