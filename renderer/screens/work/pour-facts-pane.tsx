// One pour's hold, reach and storey below, changed part by part. A hold keeps its set standing until it is taken off.
import { type ReactNode, useState } from 'react';
import { parseLength } from '../../../core/units/length.ts';
import { useCommand, useCore } from '../../client/core.tsx';
import type { Input, Output } from '../../client/shapes.ts';
import { useJob } from '../../parts/job.tsx';
import { useLiveNow } from '../../parts/live-now.ts';
import { RefusalNote, Waiting } from '../../parts/notes.tsx';
import { withSpokenInstants } from '../../parts/spoken-instants.ts';
import type { TimeWords } from '../../parts/time-words.ts';
import { useUndo } from '../../parts/undo.tsx';
import { useUnits } from '../../parts/units.tsx';
import { readWhen } from '../../parts/when-text.ts';
import { BoardPane } from '../board/side-pane.tsx';
import { EntryList, type WrongField } from './entry-list.tsx';

type Read = Output<'pour.facts'>;
type Facts = Input<'pour.facts.save'>['facts'];
type Save = (facts: Facts, words: string) => Promise<WrongField | null>;

export function PourFactsPane(props: {
  readonly pour: string;
  readonly words: TimeWords;
  readonly readOnly: boolean;
  readonly onClose: () => void;
}): ReactNode {
  const { pour, words } = props;
  const job = useJob().code;
  const read = useCore('pour.facts', { job, pour, ...useLiveNow(job) });
  const { mutateAsync, error, isPending } = useCommand('pour.facts.save');
  const { remember } = useUndo();
  const save: Save = async (facts, what) => {
    try {
      const { before } = await mutateAsync({ job, pour, facts });
      const was = Object.fromEntries(
        Object.entries(before).filter(([name]) => Object.hasOwn(facts, name)),
      ) as Facts;
      remember({
        words: `${pour}: ${what}`,
        undo: () => mutateAsync({ job, pour, facts: was }),
        redo: () => mutateAsync({ job, pour, facts }),
      });
      return null;
    } catch {
      return { name: '', message: '' };
    }
  };
  const given = read.data;
  return (
    <BoardPane title={`${pour}: hold, reach, storey`} onClose={props.onClose}>
      {read.error === null ? null : <RefusalNote error={read.error} />}
      {error === null ? null : <RefusalNote error={error} />}
      {given === undefined || given.pour !== pour ? (
        <Waiting what="Reading the pour …" />
      ) : (
        <fieldset className="work-facts" disabled={props.readOnly || isPending}>
          <legend className="visually-hidden">What is entered of {pour}</legend>
          <FindingsPart given={given} />
          <HoldPart given={given} words={words} save={save} />
          <ReachPart given={given} save={save} />
          <StoreyPart given={given} save={save} />
          <LaidDownPart given={given} save={save} />
        </fieldset>
      )}
    </BoardPane>
  );
}

interface PartProps {
  readonly given: Read;
  readonly save: Save;
}

function FindingsPart({ given }: { readonly given: Read }): ReactNode {
  const own = given.findings.filter(({ rule }) => /^(on-hold|stands-on|crane)/u.test(rule));
  return own.map(({ rule, severity, message }) => (
    <p key={rule} className={`note note-${severity}`}>
      <span className="note-word">{severity}</span>
      <span>{withSpokenInstants(message)}</span>
    </p>
  ));
}

function HoldPart({ given, words, save }: PartProps & { readonly words: TimeWords }): ReactNode {
  const job = useJob().code;
  const planning = useCore('planning.read', { job });
  const { hold } = given.facts;
  const add = async (typed: Readonly<Record<string, string>>): Promise<WrongField | null> => {
    const reason = (typed.reason ?? '').trim();
    if (reason === '') return { name: 'reason', message: 'Why is it held?' };
    const since = given.now;
    const until = (typed.until ?? '').trim();
    const read = until === '' ? null : readWhen(until, since, planning.data?.timeZone ?? 'UTC');
    if (read !== null && !read.ok) return { name: 'until', message: read.error.message };
    return save(
      { hold: { reason, who: (typed.who ?? '').trim(), since, until: read === null ? null : read.value } },
      'hold',
    );
  };
  return (
    <EntryList
      title="Hold"
      note="A test failed, a query is open: the set keeps standing. Left open until when, it stands to the end of the plan."
      lines={
        hold === null
          ? []
          : [
              {
                key: 'hold',
                name: 'the hold',
                cells: [
                  hold.reason,
                  hold.who,
                  hold.until === null ? 'nobody knows until when' : `until ${words.full(hold.until)}`,
                ],
              },
            ]
      }
      fields={[
        { name: 'reason', label: 'Why', placeholder: 'test failed' },
        { name: 'who', label: 'Who holds it', placeholder: 'the laboratory' },
        { name: 'until', label: 'Until', placeholder: '9 Mar 8:00' },
      ]}
      onAdd={add}
      addWord="Hold it"
      onTakeOut={() => save({ hold: null }, 'take the hold off')}
    />
  );
}

function ReachPart({ given, save }: PartProps): ReactNode {
  const { length } = useUnits();
  const { reach } = given.facts;
  const add = async (typed: Readonly<Record<string, string>>): Promise<WrongField | null> => {
    const radius = parseLength(typed.radius ?? '');
    if (!radius.ok) return { name: 'radius', message: radius.error.message };
    return save({ reach: { crane: typed.crane ?? '', radiusNm: radius.value } }, 'reach');
  };
  if (given.cranes.length === 0) return <p className="soft">No crane with a chart is entered yet.</p>;
  return (
    <EntryList
      title="Crane and radius"
      note="The farthest of its gangs from the crane."
      lines={
        reach === null
          ? []
          : [{ key: 'reach', name: 'the reach', cells: [reach.crane, length(reach.radiusNm)] }]
      }
      fields={[
        {
          name: 'crane',
          label: 'Crane',
          options: given.cranes.map(({ crane, name }) => [crane, `${crane} ${name}`]),
        },
        { name: 'radius', label: 'Radius', placeholder: length(28_041_600_000) },
      ]}
      onAdd={add}
      addWord="Set"
      onTakeOut={() => save({ reach: null }, 'take the reach out')}
    />
  );
}

function StoreyPart({ given, save }: PartProps): ReactNode {
  const { standsOn } = given.facts;
  const add = async (typed: Readonly<Record<string, string>>): Promise<WrongField | null> => {
    const strengthH = Number(typed.hours);
    if ((typed.hours ?? '').trim() === '' || !(strengthH >= 0 && strengthH <= 10_000))
      return { name: 'hours', message: 'Hours by the clock are wanted, such as 72.' };
    return save({ standsOn: { pour: typed.pour ?? '', strengthH } }, `stands on ${typed.pour ?? ''}`);
  };
  return (
    <EntryList
      title="Stands on"
      note="The storey below that carries its brackets, and the hours by the clock after which that is strong enough."
      lines={
        standsOn === null
          ? []
          : [
              {
                key: 'stands',
                name: 'the storey below',
                cells: [standsOn.pour, `strong after ${standsOn.strengthH} h`],
              },
            ]
      }
      fields={[
        {
          name: 'pour',
          label: 'Pour below',
          options: given.pours.map(({ pour, name }) => [pour, `${pour} ${name}`]),
        },
        { name: 'hours', label: 'Strong after, hours', placeholder: '72' },
      ]}
      onAdd={add}
      addWord="Set"
      onTakeOut={() => save({ standsOn: null }, 'stands on its own')}
    />
  );
}

function LaidDownPart({ given, save }: PartProps): ReactNode {
  const { laidDown } = given.facts;
  const [id] = useState('laid-down');
  return (
    <p className="field">
      <label className="field-label" htmlFor={id}>
        After its strip
      </label>
      <select
        id={id}
        value={laidDown === null ? 'job' : laidDown ? 'down' : 'straight'}
        onChange={(event) =>
          void save(
            { laidDown: event.target.value === 'job' ? null : event.target.value === 'down' },
            'whether gangs are laid down',
          )
        }
      >
        <option value="job">
          as the job: {given.laidDownByJob ? 'laid down' : 'straight on where it can'}
        </option>
        <option value="down">gangs are laid down</option>
        <option value="straight">gangs fly straight on where they can</option>
      </select>
    </p>
  );
}
