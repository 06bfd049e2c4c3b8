// One load: drawn, in the order of loading, and at the side when it leaves and who tied it down.
import { type ReactNode, useState } from 'react';
import { Link } from 'wouter';
import { type Output, useCommand, useCore } from '../../../client/core.tsx';
import { useJobClock, useTimeWords } from '../../../parts/job-time.ts';
import { RefusalNote, Waiting } from '../../../parts/notes.tsx';
import { paperSheetAddress } from '../../../parts/paper-sheets.ts';
import { useUndo } from '../../../parts/undo.tsx';
import { readWhen } from '../../../parts/when-text.ts';
import { errorFor, FormEnd, TextField } from '../gangs/form-parts.tsx';
import { useKept } from '../gangs/use-kept.ts';
import { LoadDrawing } from './load-drawing.tsx';
import { LoadOrder, LoadSums } from './load-order.tsx';

export function LoadView({ load }: { readonly load: string }): ReactNode {
  const read = useCore('load.read', { load });
  if (read.error !== null) return <RefusalNote error={read.error} />;
  if (read.data === undefined) return <Waiting what="Reading the load …" />;
  const { figures, names, number, passes } = read.data;
  return (
    <>
      <div className="pane grow load-page">
        <p className="pick-acts">
          <Link href="/yard/loading?show=loads">All loads</Link>
          <Link href={paperSheetAddress('loading', load)}>Print the loading list</Link>
        </p>
        <h2>
          {figures.truck.code} {figures.truck.name}
          {number === null ? '' : `, note ${number}`}
        </h2>
        {passes.length === 0 ? null : (
          <div className="note note-stop" role="alert">
            <span className="note-word">Not so</span>
            <span>
              The truck was changed since this load was kept. It now passes:{' '}
              {passes.map((each) => each.replaceAll('-', ' ')).join(', ')}.
            </span>
          </div>
        )}
        <LoadSums figures={figures} />
        <LoadDrawing figures={figures} />
        <LoadOrder figures={figures} names={names} />
      </div>
      <aside className="pane side yard-side" aria-label="Leaving">
        <div className="side-head">
          <h2>Leaving</h2>
        </div>
        <LeavingForm key={read.data.load.version} read={read.data} />
      </aside>
    </>
  );
}

interface Leaving {
  readonly leaves: string;
  readonly tiedDownBy: string;
  readonly remark: string;
}

function LeavingForm({ read }: { readonly read: Output<'load.read'> }): ReactNode {
  const { load } = read;
  const words = useTimeWords();
  const clock = useJobClock();
  const save = useCommand('load.save');
  const { remember } = useUndo();
  const { draft, set, clear } = useKept<Leaving>(`leaving ${load.id} ${load.version}`, {
    leaves: load.leavesAt === null ? '' : words.full(load.leavesAt),
    tiedDownBy: load.tiedDownBy ?? '',
    remark: load.remark ?? '',
  });
  const [wrong, setWrong] = useState<Parameters<typeof errorFor>[0]>({});
  const edit = (part: Partial<Leaving>): void => {
    save.reset();
    setWrong({});
    set(part);
  };
  const keep = async (): Promise<void> => {
    if (clock === null || save.isPending) return;
    const text = draft.leaves.trim();
    const shown = load.leavesAt === null ? '' : words.full(load.leavesAt);
    const when = text === '' || text === shown ? null : readWhen(text, clock.planFrom, clock.timeZone);
    if (when?.ok === false) {
      setWrong({ leaves: when.error });
      return;
    }
    const next = {
      ...load,
      leavesAt: text === '' ? null : (when?.value ?? load.leavesAt),
      tiedDownBy: draft.tiedDownBy.trim() === '' ? null : draft.tiedDownBy.trim(),
      remark: draft.remark.trim() === '' ? null : draft.remark.trim(),
    };
    let version = 0;
    try {
      ({ version } = await save.mutateAsync({ load: next }));
    } catch {
      // Said at the foot of the form.
      return;
    }
    clear();
    const put = async (state: typeof load): Promise<void> => {
      ({ version } = await save.mutateAsync({ load: { ...state, version } }));
    };
    remember({
      words: `the load on ${load.truck}`,
      undo: () => put(load),
      redo: () => put(next),
    });
  };
  return (
    <form
      className="slip"
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        void keep();
      }}
    >
      <div className="slip-fields">
        <TextField
          label="Leaves"
          value={draft.leaves}
          placeholder="as 10 Mar 16:00"
          error={errorFor(wrong, save.error, 'leaves')}
          onChange={(leaves) => edit({ leaves })}
        />
        <TextField
          label="Tied down by"
          value={draft.tiedDownBy}
          maxLength={80}
          onChange={(tiedDownBy) => edit({ tiedDownBy })}
        />
        <TextField
          label="Remark"
          className="wide"
          value={draft.remark}
          onChange={(remark) => edit({ remark })}
        />
      </div>
      <p className="soft">
        Whoever tied it down stands on the loading list by name. How a load is secured follows from the rules
        that bind the driver, not from this drawing.
      </p>
      <FormEnd words="Keep" busy={save.isPending} done={null} refused={save.error} fields={[]} />
    </form>
  );
}
