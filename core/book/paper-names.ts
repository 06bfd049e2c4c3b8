// Which papers stand behind ids, so that a movement can say by what it was booked: a note, a strip ticket, a count or
// a repair, by its number where it bears one.
import { sql } from 'kysely';
import type { Kysely } from 'kysely';
import type { PaperName } from './book.ts';
import { chunks } from './rows.ts';
import type { BookTables } from './tables.ts';

export async function readPaperNames(
  db: Kysely<BookTables>,
  ids: readonly string[],
): Promise<ReadonlyMap<string, PaperName>> {
  const names = new Map<string, PaperName>();
  for (const chunk of chunks([...new Set(ids)])) {
    const those = sql.join(chunk);
    const { rows } = await sql<PaperName & { readonly id: string }>`
      select id, 'note' as kind, number from yard_note where id in (${those})
      union all select id, 'ticket', cast(number as text) from strip_ticket where id in (${those})
      union all select id, 'count', cast(number as text) from stock_count where id in (${those})
      union all select id, 'repair', null from repair_job where id in (${those})
    `.execute(db);
    for (const { id, kind, number } of rows) names.set(id, { kind, number });
  }
  return names;
}
