// The draft held against the core: everything that makes no sense, each at its place, and what it would change.
import { useMemo } from 'react';
import type { RuleTables } from '../../../core/catalogue/rules.ts';
import type { Refused } from '../../client/refused.ts';
import { useCore } from '../../client/core.tsx';
import { useUnits } from '../../parts/units.tsx';
import { changedComponents } from './catalogue-draft.ts';
import { draftFromBook } from './draft-store.ts';
import { placed } from './problem-places.ts';
import { inWords } from './problem-words.ts';
import { type Problem, type RulesDraft, rulesOfDraft } from './rules-draft.ts';
import type { BookComponent, RulesCheck, RulesRead } from './rules-shapes.ts';

export interface Checked {
  /** As far as they can be read. */
  readonly rules: RuleTables;
  readonly components: readonly BookComponent[];
  /** Whether saving would change anything. */
  readonly isChanged: boolean;
  /** Cells that cannot be read. While there are any, the core is not asked. */
  readonly unread: readonly Problem[];
  readonly problems: readonly Problem[];
  /** What saving would change; undefined until the core has answered for this very draft. */
  readonly changes: RulesCheck | undefined;
  readonly error: Refused | null;
}

export function useChecked(draft: RulesDraft, read: RulesRead | undefined): Checked {
  const { system } = useUnits();
  const { rules, components, unread, isChanged } = useMemo(() => {
    const tables = rulesOfDraft(draft);
    const catalogue = changedComponents(draft.system, draft.catalogue);
    // The book's rules in the form in which this screen writes the same.
    const before = read === undefined ? '' : inOrder(rulesOfDraft(draftFromBook(read)).rules);
    return {
      rules: tables.rules,
      components: catalogue.components,
      unread: [...tables.problems, ...catalogue.problems],
      isChanged: read === undefined || catalogue.components.length > 0 || inOrder(tables.rules) !== before,
    };
  }, [draft, read]);
  const check = useCore(
    'rules.check',
    { system: draft.system, rules, components: [...components] },
    { enabled: isChanged && unread.length === 0 },
  );
  const current = isChanged && unread.length === 0 && !check.isPlaceholderData ? check.data : undefined;
  const problems = useMemo(() => {
    const found = (current?.problems ?? []).map(({ field, message, hint }) => ({
      place: field ?? '',
      message,
      ...(hint === undefined ? {} : { hint }),
    }));
    return [...unread, ...placed(found, draft).map((problem) => inWords(problem, system))];
  }, [unread, current, draft, system]);
  return {
    rules,
    components,
    isChanged,
    unread,
    problems,
    changes: current,
    error: unread.length === 0 && isChanged ? check.error : null,
  };
}

/** The same rules are the same text, in whatever order their keys were put in. */
export function inOrder(value: unknown): string {
  return JSON.stringify(value, (_key, each: unknown) =>
    each !== null && typeof each === 'object' && !Array.isArray(each)
      ? Object.fromEntries(Object.entries(each).sort(([one], [other]) => (one < other ? -1 : 1)))
      : each,
  );
}
