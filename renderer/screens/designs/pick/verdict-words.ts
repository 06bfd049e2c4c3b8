// What stands against a pick, in one line: never that nothing can happen.
import { never } from '../../../../core/answer.ts';
import type { Output } from '../../../client/core.tsx';

export function verdictWords(check: Output<'pick.check'>): { readonly word: string; readonly rest: string } {
  const stops = check.findings.filter(({ severity }) => severity === 'stop');
  const cautions = check.findings.filter(({ severity }) => severity === 'caution').length;
  switch (check.verdict) {
    case 'refused':
      return { word: 'Refused.', rest: `${stops[0]?.message ?? ''}${splitWords(check.split)}` };
    case 'caution':
      return { word: 'With caution:', rest: `${cautions} caution${cautions === 1 ? '' : 's'} on the sheet.` };
    case 'nothing-found':
      return {
        word: 'Nothing found against it',
        rest: 'in what is entered. That is no release: the competent person decides.',
      };
    default:
      return never(check.verdict);
  }
}

function splitWords(split: Output<'pick.check'>['split']): string {
  if (split === null || split.kind === 'not-finished') return '';
  if (split.kind === 'none') return ' No split at its joints works either.';
  const extra = split.extraPicks;
  return ` It works in ${split.parts.length} parts, ${extra} pick${extra === 1 ? '' : 's'} more.`;
}
