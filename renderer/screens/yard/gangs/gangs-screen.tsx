// Gangs as things, lifting gear by serial number, and containers: three tables of the yard, each with what stands
// behind a row at its side. What is open stands in the address.
import { type ReactNode, useRef } from 'react';
import { Link, useParams } from 'wouter';
import { go } from '../../../client/address.ts';
import { useAddressQuery } from '../../../client/query.ts';
import { Choice } from '../../../parts/choice.tsx';
import { CautionLine } from '../../../parts/notes.tsx';
import { paperSheetAddress } from '../../../parts/paper-sheets.ts';
import { YardTabs } from '../yard-tabs.tsx';
import { ContainersView } from './containers-view.tsx';
import { GangsView } from './gangs-view.tsx';
import { GearView } from './gear-view.tsx';
import '../yard.css';
import './gangs.css';

const views = [
  ['gangs', 'Gangs'],
  ['gear', 'Lifting gear'],
  ['containers', 'Containers'],
] as const;
type View = (typeof views)[number][0];

const adds: Readonly<Record<View, string>> = {
  gangs: 'Build a gang',
  gear: 'Enter a piece',
  containers: 'Tag a piece',
};

export interface ViewProps {
  /** The tag or serial number that is open at the side. */
  readonly chosen: string | null;
  readonly adding: boolean;
  readonly onOpen: (code: string | null) => void;
  readonly onClose: () => void;
}

export function GangsScreen(): ReactNode {
  const { tag } = useParams<{ tag?: string }>();
  const [query, change] = useAddressQuery();
  const view = views.find(([each]) => each === query.get('show'))?.[0] ?? 'gangs';
  const adding = query.get('add') !== null;
  const body = useRef<HTMLDivElement>(null);
  const address = (code: string | null): string => {
    const path = code === null ? '/yard/gangs' : `/yard/gangs/${encodeURIComponent(code)}`;
    return view === 'gangs' ? path : `${path}?show=${view}`;
  };
  const chosen = tag === undefined ? null : decodeURIComponent(tag);
  const props: ViewProps = {
    chosen,
    adding,
    onOpen: (code) => go(address(code)),
    onClose: () => {
      // Back to the row that was opened, before it loses its mark.
      body.current?.querySelector<HTMLElement>('.yard-main tr.selected')?.focus();
      go(address(null));
    },
  };
  return (
    <div className="screen yard">
      <header className="screen-head">
        <h1>Yard</h1>
        <YardTabs />
        <Choice
          label="Gangs, lifting gear or containers"
          value={view}
          options={views}
          onChange={(next) => go(next === 'gangs' ? '/yard/gangs' : `/yard/gangs?show=${next}`)}
        />
        {view === 'gear' ? null : (
          <Link
            className="head-end"
            href={paperSheetAddress('tags', view === 'gangs' ? 'all-gangs' : 'all-containers')}
          >
            Print all tags
          </Link>
        )}
        <button
          type="button"
          className={view === 'gear' ? 'primary head-end' : 'primary'}
          aria-expanded={adding}
          onClick={() => change({ add: adding ? null : 'open', issue: null })}
        >
          {adds[view]}
        </button>
      </header>
      <div className="screen-body" ref={body}>
        {view === 'gangs' ? <GangsView {...props} /> : null}
        {view === 'gear' ? <GearView {...props} /> : null}
        {view === 'containers' ? <ContainersView {...props} /> : null}
      </div>
      <CautionLine about="Weights are reckoned from piece weights as entered; a competent person checks before lifting." />
    </div>
  );
}
