// What a start opens first at either door: the demo, the book that was named, or the one open last.
import { z } from 'zod';
import { answer } from '../core/answer.ts';
import type { Answer } from '../core/answer.ts';
import { hostState } from '../core/host/host-calls.ts';

export const firstBook = z.strictObject({ demo: z.boolean(), book: z.string().nullable() });
export type FirstBook = z.output<typeof firstBook>;

type Call = (name: string, input: unknown) => Promise<Answer<unknown>>;

/** Answers null where there was nothing to open. */
export async function openFirst(call: Call, first: FirstBook): Promise<Answer<unknown>> {
  if (first.demo) return call('host.demo', {});
  if (first.book !== null) return call('host.open', { file: first.book });
  const state = await call('host.state', {});
  if (!state.ok) return state;
  const [last] = hostState.parse(state.value).recent;
  if (last === undefined) return answer(null);
  const opened = await call('host.open', { file: last.file });
  // Nobody asked for it by name: what stands in its way is said, and the start screen offers the rest.
  if (!opened.ok) console.error(`regang: ${opened.error.message}`);
  return answer(null);
}
