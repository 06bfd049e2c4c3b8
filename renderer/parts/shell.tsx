// What stands around every screen: words to go by along the top, and along the bottom the title block
// with the job, the plan's date, units, theme, book and door.
import { type ReactNode, useEffect } from 'react';
import { Button } from 'react-aria-components';
import { Link, useLocation } from 'wouter';
import { type HostOutput, useCore } from '../client/core.tsx';
import { useMenu } from './book-file.ts';
import { Fault } from './fault.tsx';
import type { Job } from './job.tsx';
import { useKeptFocus } from './kept-focus.ts';
import { useLiveNow } from './live-now.ts';
import { Palette } from './palette.tsx';
import { screens } from './screens.ts';
import { sheetNameAt } from './sheet-address.ts';
import { TitleBlock } from './title-block.tsx';
import { useUndo } from './undo.tsx';

export function Shell(props: {
  readonly host: HostOutput<'host.state'>;
  readonly jobs: readonly Job[];
  readonly job: Job | null;
  readonly children: ReactNode;
}): ReactNode {
  const { job } = props;
  const undo = useUndo();
  useMenu();
  useKeptFocus();
  const [path] = useLocation();
  const here =
    screens.find((screen) => path.startsWith(screen.path))?.name ??
    sheetNameAt(path) ??
    (path === '/fill' ? 'Designs' : 'Board');
  useEffect(() => {
    document.title = `${here}${job === null ? '' : ` · ${job.code} ${job.name}`} · Regang`;
  }, [here, job]);
  return (
    <div className="shell">
      <header className="shell-top">
        <span className="shell-name">Regang</span>
        <nav className="shell-nav" aria-label="Screens">
          {screens.map((screen) => (
            <Link
              key={screen.path}
              href={screen.path}
              aria-current={here === screen.name ? 'page' : undefined}
            >
              {screen.name}
              {screen.path === '/shortfalls' && job !== null ? <ShortfallCount job={job.code} /> : null}
            </Link>
          ))}
        </nav>
        <div className="shell-top-end">
          <output className="shell-said">{undo.said}</output>
          <UndoButtons />
          <Palette job={job} />
        </div>
      </header>
      <main className="shell-main" tabIndex={-1}>
        <Fault place={path}>{props.children}</Fault>
      </main>
      <TitleBlock host={props.host} jobs={props.jobs} job={job} screen={here} />
    </div>
  );
}

/** There while something can be taken back or done again; the keys are the platform's own. */
function UndoButtons(): ReactNode {
  const { undo, redo, undoWords, redoWords } = useUndo();
  return (
    <>
      {undoWords === null ? null : (
        <Button
          className="quiet"
          onPress={undo}
          aria-label={`Undo: ${undoWords}`}
          aria-keyshortcuts="Control+Z"
        >
          Undo
        </Button>
      )}
      {redoWords === null ? null : (
        <Button
          className="quiet"
          onPress={redo}
          aria-label={`Redo: ${redoWords}`}
          aria-keyshortcuts="Control+Shift+Z"
        >
          Redo
        </Button>
      )}
    </>
  );
}

function ShortfallCount(props: { readonly job: string }): ReactNode {
  const list = useCore('shortfall.list', { job: props.job, ...useLiveNow(props.job) });
  const count = list.data?.shortfalls.length ?? 0;
  return count === 0 ? null : <span className="nav-count">{count}</span>;
}
