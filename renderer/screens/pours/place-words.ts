// Why a placed pour does not stand a day sooner.
import { never } from '../../../core/answer.ts';
import type { Output } from '../../client/shapes.ts';
import { dateWords, type TimeWords } from '../../parts/time-words.ts';
import { heldBackWords } from '../board/date-words.ts';

type NotBefore = NonNullable<Output<'pour.place'>['placed'][number]['notBefore']>;

export function notBeforeWords(why: NotBefore, words: TimeWords): string {
  switch (why.kind) {
    case 'crew':
      return `The crew has no hours left on ${dateWords(why.date)}.`;
    case 'component':
      return `${why.missing} ${why.component} are wanting on ${dateWords(why.date)}.`;
    case 'first-day':
    case 'after':
    case 'stands-on':
    case 'gate':
      return heldBackWords(why, words);
    default:
      return never(why);
  }
}
