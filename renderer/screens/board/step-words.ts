// One step of a day in words: "Wed 07:00 strip W5", "Thu re-gang GB for K1, 3 h".
import { never } from '../../../core/answer.ts';
import type { TimeWords } from '../../parts/time-words.ts';
import type { Step } from './board-types.ts';

export function stepWords(step: Step, words: TimeWords): string {
  const gangs = step.designs
    .map(({ design, quantity }) => (quantity === 1 ? design : `${quantity} ${design}`))
    .join(', ');
  return `${words.dayTime(step.from)} ${verbWords(step, gangs)}`;
}

function verbWords(step: Step, gangs: string): string {
  const pour = step.pour ?? 'the yard';
  const to = step.toPour ?? pour;
  const what = gangs === '' ? '' : ` ${gangs}`;
  switch (step.kind) {
    case 'assemble':
      return `assemble${what} for ${to}`;
    case 'set':
      return `set${what} at ${pour}`;
    case 'close':
      return `close ${pour}${what === '' ? '' : ` with${what}`}`;
    case 'pour':
      return `pour ${pour}`;
    case 'strip':
      return `strip ${pour}`;
    case 'fly-on':
      return `fly${what} from ${pour} to ${to}`;
    case 'regang':
      return `re-gang${what} for ${to}`;
    case 'break-down':
      return `break down${what} from ${pour}`;
    case 'ready':
      return `pieces of ${pour} ready`;
    default:
      return never(step.kind);
  }
}
