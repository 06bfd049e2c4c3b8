// Every component a rule names is in the catalogue, and is none of a kind that cannot do that work.
import { refuse, type Refusal } from '../answer.ts';
import type { Component, ComponentKind } from './component.ts';
import type { RuleTables } from './rules.ts';

/** The places at which tables name components, and the kinds that may stand there; the usual one first. */
function namesIn(
  rules: RuleTables,
): readonly (readonly [field: string, code: string | undefined, kinds: readonly ComponentKind[]])[] {
  return [
    ['locks.component', rules.locks?.component, ['lock', 'adjustable-lock']],
    ['fillerLocks.component', rules.fillerLocks?.component, ['adjustable-lock', 'lock']],
    ['rails.bolt', rules.rails?.bolt, ['rail-bolt']],
    ['placingRails.bolt', rules.placingRails?.bolt, ['rail-bolt']],
    ['hooks.component', rules.hooks?.component, ['hook']],
    ['brackets.component', rules.brackets?.component, ['bracket']],
    ['brackets.platform.post', rules.brackets?.platform?.post, ['post']],
    ['braces.component', rules.braces?.component, ['brace']],
    ['braces.shoe', rules.braces?.shoe, ['brace-shoe']],
    ['stopEnds.backing', rules.stopEnds?.backing, backingKinds],
    ['closures.backing', rules.closures?.backing, backingKinds],
  ];
}

const backingKinds: readonly ComponentKind[] = ['stiffening-rail', 'stop-end', 'closure', 'plank'];

export function namedProblems(rules: RuleTables, components: readonly Component[]): readonly Refusal[] {
  const kinds = new Map(components.map((item) => [item.code, item.kind]));
  return namesIn(rules).flatMap(([field, code, wanted]) => {
    if (code === undefined) return [];
    const kind = kinds.get(code);
    if (kind === undefined) {
      const message = `${field} names ${code}, which is not in the catalogue.`;
      const hint = 'Maybe the code is spelled in another way there.';
      return [refuse('rule-component-unknown', message, { field, hint }).error];
    }
    if (kind === 'other' || wanted.includes(kind)) return [];
    const message = `${field} names ${code}, which is a ${kind} and no ${wanted[0]}.`;
    return [refuse('rule-component-kind', message, { field }).error];
  });
}
