// The catalogue and the rule tables of a panel system: chosen at the left, written in the middle, with a gang
// of the system taken off by them at the right, and what saving would change.
import { type ReactNode, useMemo } from 'react';
import { useParams } from 'wouter';
import type { RuleTables } from '../../../core/catalogue/rules.ts';
import { go } from '../../client/address.ts';
import { useCore } from '../../client/core.tsx';
import { useAddressQuery } from '../../client/query.ts';
import { CautionLine, Empty, RefusalNote, Waiting } from '../../parts/notes.tsx';
import { tableForms } from './all-forms.ts';
import { CatalogueView } from './catalogue-view.tsx';
import { ChangeList, ChangesPart } from './changes-part.tsx';
import { type DraftEdits, useBeginSystem, useNewSystems, useRulesDraft } from './draft-store.ts';
import { ExamplePane } from './example-pane.tsx';
import { RuleTableView } from './rule-table-view.tsx';
import { RulesHead } from './rules-head.tsx';
import { RulesNav, type SystemName } from './rules-nav.tsx';
import type { RulesRead } from './rules-shapes.ts';
import { useChecked } from './use-checked.ts';
import { VersionsView } from './versions-view.tsx';
import './rules.css';

const noSystem = 'no-system';
const noRules: RuleTables = {};

export function RulesScreen(): ReactNode {
  const { system: asked } = useParams<{ system?: string }>();
  const first = useCore('rules.read', {});
  const inBook = useMemo(() => first.data?.systems ?? [], [first.data]);
  const known = useMemo(() => new Set(inBook.map(({ code }) => code)), [inBook]);
  const begun = useNewSystems(known);
  const beginSystem = useBeginSystem();
  const system =
    asked === undefined || asked === ''
      ? (first.data?.system ?? begun[0]?.system ?? null)
      : decodeURIComponent(asked);
  const isKnown = system !== null && known.has(system);
  const read = useCore('rules.read', system === null ? {} : { system }, { enabled: isKnown });
  const current = isKnown && read.data?.system === system ? read.data : undefined;
  const edits = useRulesDraft(system, current);

  if (first.error !== null && first.error.code !== noSystem) return <RefusalNote error={first.error} />;
  if (first.data === undefined && first.error === null) return <Waiting what="Reading the rules …" />;
  if (read.error !== null) return <RefusalNote error={read.error} />;
  if (isKnown && edits === null) return <Waiting what={`Reading ${system} …`} />;
  const names: readonly SystemName[] = [
    ...inBook.map(({ code, name }) => ({ code, name, isNew: false })),
    ...begun.map((draft) => ({ code: draft.system, name: draft.systemName, isNew: true })),
  ];
  const begin = (code: string, name: string): void => {
    const shared = (first.data?.components ?? []).filter((component) => component.system === null);
    beginSystem(code, name, shared);
    go(`/rules/${encodeURIComponent(code)}?table=components`);
  };
  if (edits === null) {
    return (
      <div className="screen rules">
        <div className="screen-body">
          <RulesNav systems={names} draft={null} problems={[]} part="" onBegin={begin} />
          <Empty title={system === null ? 'No panel system yet' : `There is no system ${system}`}>
            <p>
              A panel system is its catalogue and the tables that say which locks, rails, hooks and brackets
              its gangs take. Begin one at the left, or import components and rules from CSV files on the{' '}
              <a href="#/book">Book</a> screen.
            </p>
          </Empty>
        </div>
      </div>
    );
  }
  return <Rules key={edits.draft.system} edits={edits} read={current} systems={names} onBegin={begin} />;
}

function Rules(props: {
  readonly edits: DraftEdits;
  readonly read: RulesRead | undefined;
  readonly systems: readonly SystemName[];
  readonly onBegin: (code: string, name: string) => void;
}): ReactNode {
  const { edits, read } = props;
  const [address] = useAddressQuery();
  const checked = useChecked(edits.draft, read);
  const asked = address.get('table') ?? '';
  const form = tableForms.find(({ name }) => name === asked);
  const part =
    form?.name ??
    (asked === 'components' || (asked === 'versions' && read !== undefined)
      ? asked
      : (tableForms[0]?.name ?? ''));
  const shown = form ?? (part === 'components' || part === 'versions' ? undefined : tableForms[0]);
  return (
    <div className="screen rules">
      <RulesHead edits={edits} checked={checked} read={read} />
      <div className="screen-body">
        <RulesNav
          systems={props.systems}
          draft={edits.draft}
          problems={checked.problems}
          part={part}
          onBegin={props.onBegin}
        />
        <div className="pane grow rules-middle">
          {shown !== undefined ? (
            <RuleTableView
              key={shown.name}
              form={shown}
              edits={edits}
              before={read?.rules ?? noRules}
              problems={checked.problems}
            />
          ) : part === 'components' ? (
            <CatalogueView edits={edits} problems={checked.problems} />
          ) : read === undefined ? null : (
            <VersionsView read={read} edits={edits} checked={checked} />
          )}
        </div>
        <aside
          className="pane side rules-side"
          aria-label="Example and what changes"
          // It may be longer than the window and hold nothing else that takes the focus: arrows scroll it.
          // oxlint-disable-next-line jsx-a11y/no-noninteractive-tabindex -- as above
          tabIndex={0}
        >
          <ChangesPart checked={checked} />
          <ExamplePane draft={edits.draft} checked={checked} />
          <ChangeList checked={checked} />
        </aside>
      </div>
      <CautionLine about="Rule tables are as they were entered; a figure marked default has no source." />
    </div>
  );
}
