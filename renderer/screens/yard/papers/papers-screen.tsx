// The papers of the yard: notes that are due, being written and booked; what is owed to suppliers; figures side by
// side; and pieces that are not where they belong.
import type { ReactNode } from 'react';
import { useAddressQuery } from '../../../client/query.ts';
import { Choice } from '../../../parts/choice.tsx';
import { CautionLine } from '../../../parts/notes.tsx';
import { YardTabs } from '../yard-tabs.tsx';
import { FiguresView } from './figures-view.tsx';
import { ForeignView } from './foreign-view.tsx';
import { NewNote } from './new-note-menu.tsx';
import { NotesList } from './notes-list.tsx';
import { OwedView } from './owed-view.tsx';
import '../yard.css';
import './papers.css';

const views = [
  ['notes', 'Notes'],
  ['owed', 'Owed to suppliers'],
  ['figures', 'Figures side by side'],
  ['foreign', 'Not ours / elsewhere'],
] as const;

export function PapersScreen(): ReactNode {
  const [query, change] = useAddressQuery();
  const view = views.find(([name]) => name === query.get('show'))?.[0] ?? 'notes';
  return (
    <div className="screen yard">
      <header className="screen-head">
        <h1>Yard</h1>
        <YardTabs />
        <Choice
          label="What of the papers"
          value={view}
          options={views}
          onChange={(next) =>
            change({ show: next === 'notes' ? null : next, row: null, form: null }, { step: true })
          }
        />
        <NewNote />
      </header>
      <div className="screen-body">
        {view === 'notes' ? <NotesList /> : null}
        {view === 'owed' ? <OwedView /> : null}
        {view === 'figures' ? <FiguresView /> : null}
        {view === 'foreign' ? <ForeignView /> : null}
      </div>
      <CautionLine about="Agreements and signed notes decide; what is shown here is what was entered." />
    </div>
  );
}
