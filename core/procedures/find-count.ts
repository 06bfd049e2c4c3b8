// A count by its id, or by its name as it is printed and scanned: N-3.
import { type Answer, answer, refuse } from '../answer.ts';
import type { BookReader } from '../book/book.ts';
import { countName, type StockCount } from '../yard/stock-count.ts';

export async function findCount(book: BookReader, asked: string): Promise<Answer<StockCount>> {
  const isName = /^N-\d+$/u.test(asked);
  const counts = await book.counts(isName ? {} : { id: asked });
  const count = isName ? counts.find((each) => countName(each) === asked) : counts[0];
  if (count !== undefined) return answer(count);
  return refuse('unknown-count', `There is no count ${asked} in this book.`, { field: 'count' });
}
