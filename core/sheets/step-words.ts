// A step of a day in words, as the crew is told it: "set 2 GA at P04".
import { never } from '../answer.ts';
import type { ReportedKind } from '../plan/steps.ts';

export function stepWords(step: {
  readonly kind: ReportedKind;
  readonly pour: string;
  readonly toPour: string | null;
  readonly designs: readonly { readonly design: string; readonly quantity: number }[];
}): string {
  const { kind, pour } = step;
  const to = step.toPour ?? pour;
  const gangs = step.designs
    .map(({ design, quantity }) => (quantity === 1 ? design : `${quantity} ${design}`))
    .join(', ');
  const what = gangs === '' ? '' : ` ${gangs}`;
  switch (kind) {
    case 'assemble':
      return `assemble${what} for ${to}`;
    case 'set':
      return `set${what} at ${pour}`;
    case 'close':
      return `close ${pour}${what === '' ? '' : ` with${what}`}`;
    case 'pour':
      return `pour ${pour}`;
    case 'strip':
      return `strip${what} at ${pour}`;
    case 'fly-on':
      return `fly${what} from ${pour} to ${to}`;
    case 'regang':
      return `re-gang${what} for ${to}`;
    case 'break-down':
      return `break down${what} from ${pour}`;
    default:
      return never(kind);
  }
}
