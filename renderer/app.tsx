// Providers in the order in which they need each other, then the shell with the screen of the address.
import { type ReactNode, useEffect, useState } from 'react';
import { Redirect, Route, Router, Switch, useLocation, useSearch } from 'wouter';
import { hashRouter } from './client/address.ts';
import { CoreProvider, useCore, useHostState } from './client/core.tsx';
import type { Transport } from './client/transport.ts';
import { type Job, JobProvider } from './parts/job.tsx';
import { RefusalNote, Waiting } from './parts/notes.tsx';
import { isPaperSheet } from './parts/paper-sheets.ts';
import { Shell } from './parts/shell.tsx';
import { ThemeProvider } from './parts/theme.tsx';
import { UndoProvider } from './parts/undo.tsx';
import { UnitsProvider } from './parts/units.tsx';
import { BoardScreen } from './screens/board/board-screen.tsx';
import { BookScreen } from './screens/book/book-screen.tsx';
import { DayEndScreen } from './screens/day-end/day-end-screen.tsx';
import { EditScreen, NewScreen } from './screens/designs/edit/editor-screen.tsx';
import { DesignsScreen } from './screens/designs/designs-screen.tsx';
import { PickScreen } from './screens/designs/pick/pick-panel.tsx';
import { RevisionsScreen } from './screens/designs/revisions/revisions-screen.tsx';
import { FillScreen } from './screens/fill/fill-screen.tsx';
import { PoursScreen } from './screens/pours/pours-screen.tsx';
import { RulesScreen } from './screens/rules/rules-screen.tsx';
import { PaperSheetScreen } from './screens/sheets/paper-sheet.tsx';
import { SheetScreen } from './screens/sheets/sheet-screen.tsx';
import { ShortfallsScreen } from './screens/shortfalls/shortfalls-screen.tsx';
import { StartScreen } from './screens/start/start-screen.tsx';
import { CountScreen } from './screens/yard/counts/count-screen.tsx';
import { CountsScreen } from './screens/yard/counts/counts-screen.tsx';
import { GangsScreen } from './screens/yard/gangs/gangs-screen.tsx';
import { PhoneScreen } from './screens/yard/phone/phone-screen.tsx';
import { NoteScreen } from './screens/yard/papers/note-screen.tsx';
import { PapersScreen } from './screens/yard/papers/papers-screen.tsx';
import { LoadingScreen } from './screens/yard/loading/loading-screen.tsx';
import { ConditionScreen } from './screens/yard/condition/condition-screen.tsx';
import { StripScreen } from './screens/yard/strip/strip-screen.tsx';
import { TicketScreen } from './screens/yard/strip/ticket-screen.tsx';
import { WorkScreen } from './screens/work/work-screen.tsx';
import { WhatIfScreen } from './screens/what-if/what-if-screen.tsx';
import { YardScreen } from './screens/yard/yard-screen.tsx';

export function App(props: { readonly transport: Transport }): ReactNode {
  return (
    <ThemeProvider>
      <CoreProvider transport={props.transport}>
        <Router {...hashRouter}>
          <UndoProvider>
            <Doors />
          </UndoProvider>
        </Router>
      </CoreProvider>
    </ThemeProvider>
  );
}

/** First start, a book without a job, or the screens of a job. */
function Doors(): ReactNode {
  const host = useHostState();
  const open = host.data?.book !== null && host.data !== undefined;
  const book = useCore('book.state', {}, { enabled: open });
  const job = useChosenJob(book.data?.jobs ?? []);
  const [path, navigate] = useLocation();
  // A book without a job has one screen. Its address stays when the first job comes in, so that an import
  // under way goes on.
  const jobless = book.data?.jobs.length === 0;
  useEffect(() => {
    if (jobless && path !== '/book') navigate('/book', { replace: true });
  }, [jobless, path, navigate]);

  if (host.error !== null) return <RefusalNote error={host.error} />;
  if (host.data === undefined) return <Waiting what="Opening …" />;
  if (host.data.book === null) {
    return (
      <UnitsProvider jobUnits="us">
        <StartScreen host={host.data} />
      </UnitsProvider>
    );
  }
  if (book.error !== null) return <RefusalNote error={book.error} />;
  if (book.data === undefined) return <Waiting what="Reading the book …" />;
  return (
    <UnitsProvider jobUnits={job?.units ?? 'us'}>
      <Shell host={host.data} jobs={book.data.jobs} job={job}>
        {job === null || path === '/book' ? (
          <BookScreen host={host.data} state={book.data} />
        ) : (
          <JobProvider job={job}>
            <Switch>
              <Route path="/board" component={BoardScreen} />
              <Route path="/board/day-end" component={DayEndScreen} />
              <Route path="/board/what-if" component={WhatIfScreen} />
              <Route path="/board/work" component={WorkScreen} />
              <Route path="/shortfalls" component={ShortfallsScreen} />
              <Route path="/designs/new" component={NewScreen} />
              <Route path="/designs/:code/edit" component={EditScreen} />
              <Route path="/designs/:code/revisions" component={RevisionsScreen} />
              <Route path="/designs/:code/pick" component={PickScreen} />
              <Route path="/designs/:code?" component={DesignsScreen} />
              <Route path="/fill" component={FillScreen} />
              <Route path="/sheets/assembly/:code">
                {({ code }) => <SheetScreen kind="assembly" code={decodeURIComponent(code)} />}
              </Route>
              <Route path="/sheets/pick/:code">
                {({ code }) => <SheetScreen kind="pick" code={decodeURIComponent(code)} />}
              </Route>
              <Route path="/sheets/:kind/:id">
                {({ kind, id }) =>
                  isPaperSheet(kind) ? (
                    <PaperSheetScreen kind={kind} id={decodeURIComponent(id)} />
                  ) : (
                    <Redirect to="/board" replace />
                  )
                }
              </Route>
              <Route path="/yard/gangs/:tag?" component={GangsScreen} />
              <Route path="/yard/phone" component={PhoneScreen} />
              <Route path="/yard/loading/:load?" component={LoadingScreen} />
              <Route path="/yard/condition" component={ConditionScreen} />
              <Route path="/yard/strip" component={StripScreen} />
              <Route path="/yard/strip/:id">{({ id }) => <TicketScreen id={decodeURIComponent(id)} />}</Route>
              <Route path="/yard" component={YardScreen} />
              <Route path="/yard/papers" component={PapersScreen} />
              <Route path="/yard/papers/:id">{({ id }) => <NoteScreen id={decodeURIComponent(id)} />}</Route>
              <Route path="/yard/counts" component={CountsScreen} />
              <Route path="/yard/counts/:id">{({ id }) => <CountScreen id={decodeURIComponent(id)} />}</Route>
              <Route path="/pours/:code?" component={PoursScreen} />
              <Route path="/rules/:system?" component={RulesScreen} />
              <Route>
                <Redirect to="/board" replace />
              </Route>
            </Switch>
          </JobProvider>
        )}
      </Shell>
    </UnitsProvider>
  );
}

function useChosenJob(jobs: readonly Job[]): Job | null {
  const asked = new URLSearchParams(useSearch()).get('job');
  const [last, setLast] = useState<string | null>(asked);
  if (asked !== null && asked !== last) setLast(asked);
  return jobs.find((job) => job.code === (asked ?? last)) ?? jobs[0] ?? null;
}
