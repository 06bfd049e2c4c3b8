// One gang at the side: how it stands, what may come next, what is in it and what happened to it.
import { type ReactNode, useState } from 'react';
import { Link } from 'wouter';
import { type Output, useCore } from '../../../client/core.tsx';
import { useTimeWords } from '../../../parts/job-time.ts';
import { RefusalNote, Waiting } from '../../../parts/notes.tsx';
import { paperSheetAddress } from '../../../parts/paper-sheets.ts';
import { useUnits } from '../../../parts/units.tsx';
import { SidePane } from '../side-pane.tsx';
import { conditionWords, reasonWords } from '../yard-words.ts';
import { BreakForm } from './break-form.tsx';
import { BuildForm } from './build-form.tsx';
import { actsOf, actWords, type GangAct, layingWords, stateWords, turnWords } from './gang-words.ts';
import { RegangForm } from './regang-form.tsx';
import { StepForm } from './step-form.tsx';

type Read = Output<'gang.read'>;

export function GangPane(props: {
  readonly tag: string;
  readonly nextTags: Readonly<Record<string, string>>;
  readonly onClose: () => void;
}): ReactNode {
  const read = useCore('gang.read', { gang: props.tag });
  const [act, setAct] = useState<GangAct | null>(null);
  const done = (): void => setAct(null);
  return (
    <SidePane title={`Gang ${props.tag}`} className="gang-side" onClose={props.onClose}>
      {read.error === null ? null : <RefusalNote error={read.error} />}
      {read.data === undefined ? (
        read.error === null ? (
          <Waiting what="Reading the gang …" />
        ) : null
      ) : (
        <>
          <GangFacts read={read.data} />
          <fieldset className="act-buttons">
            <legend className="visually-hidden">What comes next for {props.tag}</legend>
            {actsOf(read.data.gang).map((each) => (
              <button
                key={each}
                type="button"
                aria-expanded={act === each}
                onClick={() => setAct(act === each ? null : each)}
              >
                {actWords[each]}
              </button>
            ))}
            <Link href={paperSheetAddress('tags', props.tag)}>Print its tag</Link>
          </fieldset>
          {act === null ? null : (
            <ActForm key={act} act={act} read={read.data} nextTags={props.nextTags} onDone={done} />
          )}
          <ContentTable content={read.data.content} />
          <Steps read={read.data} />
          <Movements read={read.data} />
        </>
      )}
    </SidePane>
  );
}

function ActForm(given: {
  readonly act: GangAct;
  readonly read: Read;
  readonly nextTags: Readonly<Record<string, string>>;
  readonly onDone: () => void;
}): ReactNode {
  const { act, read, onDone } = given;
  switch (act) {
    case 'build':
      return <BuildForm tag={read.gang} nextTags={given.nextTags} onBuilt={onDone} />;
    case 'regang':
      return <RegangForm gang={read.gang} onDone={onDone} />;
    case 'break':
      return <BreakForm gang={read.gang} content={read.content} onDone={onDone} />;
    case 'stand':
    case 'strip':
    case 'stand-by':
    case 'move':
      return <StepForm act={act} gang={read.gang} onDone={onDone} />;
    default:
      throw new Error(`No form for ${String(act satisfies never)}.`);
  }
}

function GangFacts({ read }: { readonly read: Read }): ReactNode {
  const { gang } = read;
  const words = useTimeWords();
  const units = useUnits();
  const isOlder = gang.stateInForce !== null && gang.designState < gang.stateInForce;
  return (
    <>
      <dl className="detail-facts">
        <Fact name="Design">
          <Link href={`/designs/${encodeURIComponent(gang.design)}`}>{gang.design}</Link> {gang.designName}
          {gang.revision === '' ? '' : `, revision ${gang.revision}`}
          {isOlder ? `; saved state ${gang.designState}, in force is ${gang.stateInForce}` : ''}
        </Fact>
        <Fact name="State">
          <b>{stateWords[gang.state]}</b>, {layingWords[gang.laying]}, since {words.full(gang.at)} ({gang.who}
          )
        </Fact>
        <Fact name="Place">
          {gang.place} · {gang.placeName}
        </Fact>
        {turnWords(gang) === '' ? null : (
          <Fact name="Turn">
            {turnWords(gang)}
            {gang.job === null ? '' : ` of ${gang.job}`}
          </Fact>
        )}
        <Fact name="Weight">
          {units.weight(gang.weightGrams)} of {gang.pieces} pieces, without hooks
        </Fact>
        {gang.remark === null ? null : <Fact name="Remark">{gang.remark}</Fact>}
      </dl>
      {gang.findings.map((each) => (
        <p key={each.message} className={`note note-${each.severity === 'stop' ? 'stop' : 'caution'}`}>
          <span className="note-word">{each.severity}</span>
          <span>{each.message}</span>
        </p>
      ))}
    </>
  );
}

function Fact(props: { readonly name: string; readonly children: ReactNode }): ReactNode {
  return (
    <div>
      <dt>{props.name}</dt>
      <dd>{props.children}</dd>
    </div>
  );
}

function ContentTable({ content }: { readonly content: Read['content'] }): ReactNode {
  const units = useUnits();
  if (content.length === 0) return <p className="soft side-words">Nothing is booked to it.</p>;
  return (
    <table className="side-table">
      <caption>What is in it</caption>
      <thead>
        <tr>
          <th scope="col">Component</th>
          <th scope="col">Owner</th>
          <th scope="col">Condition</th>
          <th scope="col" className="numeric">
            Pieces
          </th>
          <th scope="col" className="numeric">
            Weight
          </th>
        </tr>
      </thead>
      <tbody>
        {content.map((line) => (
          <tr key={`${line.component} ${line.owner} ${line.condition}`}>
            <td>
              <b>{line.component}</b> <span className="soft">{line.name}</span>
            </td>
            <td>{line.owner}</td>
            <td>{conditionWords[line.condition]}</td>
            <td className="numeric">{line.quantity}</td>
            <td className="numeric">{units.weight(line.weightGrams)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function Steps({ read }: { readonly read: Read }): ReactNode {
  const words = useTimeWords();
  return (
    <table className="side-table">
      <caption>What happened to it, newest first</caption>
      <thead>
        <tr>
          <th scope="col">When</th>
          <th scope="col">State</th>
          <th scope="col">Design</th>
          <th scope="col">Place</th>
          <th scope="col">Turn</th>
        </tr>
      </thead>
      <tbody>
        {read.steps.map((step) => (
          <tr key={step.number}>
            <td>{words.full(step.at)}</td>
            <td>
              {stateWords[step.state]}, {layingWords[step.laying]}
              {step.remark === null ? null : <span className="soft step-remark">{step.remark}</span>}
            </td>
            <td>{step.design}</td>
            <td>{step.place}</td>
            <td>{turnWords(step)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function Movements({ read }: { readonly read: Read }): ReactNode {
  const words = useTimeWords();
  return (
    <details className="side-words">
      <summary>
        Its {read.movements.length}
        {read.moreMovements ? ' newest' : ''} movements in the ledger
      </summary>
      <ol>
        {read.movements.map((row) => (
          <li key={row.id}>
            {words.full(row.at)} · {reasonWords[row.reason]} · {row.quantity} {row.component} ({row.owner}){' '}
            {row.from} → {row.to}, {conditionWords[row.conditionAfter]}
          </li>
        ))}
      </ol>
    </details>
  );
}
