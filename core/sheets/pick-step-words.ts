// A pick of the crane in words, in the order of a day: "strip GA at P01", "loose pieces to P04".
import { never } from '../answer.ts';
import type { PickKind } from '../plan/work/picks.ts';

export function pickStepWords(pick: {
  readonly kind: PickKind;
  readonly pour: string;
  readonly toPour: string | null;
  readonly design: string | null;
}): string {
  const { kind, pour, toPour } = pick;
  const gang = pick.design ?? 'a gang';
  switch (kind) {
    case 'strip':
      return `strip ${gang} at ${pour}`;
    case 'fly-on':
      return `fly ${gang} from ${pour} straight to ${toPour ?? pour}`;
    case 'strip-loose':
      return `loose pieces down from ${pour}`;
    case 'set':
      return `set ${gang} at ${pour}`;
    case 'set-loose':
      return `loose pieces to ${pour}`;
    default:
      return never(kind);
  }
}
