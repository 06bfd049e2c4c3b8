// Every way out of one shortfall, the cheapest first: what it costs and what it does to the rest of the plan, carried out
// with one press and taken back by undo. Near pieces are only named for the designer.
import { type ReactNode, useState } from 'react';
import { Button } from 'react-aria-components';
import { roughMoney } from '../../../core/units/money.ts';
import { useCore } from '../../client/core.tsx';
import { useApply } from '../../parts/changes/use-apply.ts';
import { useLiveNow } from '../../parts/live-now.ts';
import { RefusalNote } from '../../parts/notes.tsx';
import type { TimeWords } from '../../parts/time-words.ts';
import { TextField } from '../yard/gangs/form-parts.tsx';
import type { Shortfall } from './shortfall-rows.ts';
import { effectWords, orderWords, shortWords, type Way, type Ways } from './way-text.ts';
import { WhyNone } from './why-none.tsx';

export function WaysPart(props: {
  readonly job: string;
  readonly shortfall: Shortfall;
  readonly words: TimeWords;
  readonly readOnly: boolean;
}): ReactNode {
  const { job, shortfall, words, readOnly } = props;
  const { component, from } = shortfall;
  const ways = useCore('shortfall.ways', { job, component, from, ...useLiveNow(job) });
  const found = ways.data?.shortfall.id === shortfall.id && !ways.isPlaceholderData ? ways.data : undefined;
  return (
    <section className="pane-part" aria-label="Ways out">
      <h3>Ways out</h3>
      {ways.error === null ? null : <RefusalNote error={ways.error} />}
      {found === undefined ? (
        ways.error === null ? (
          <output className="soft">Planning the ways out …</output>
        ) : null
      ) : (
        <Found found={found} job={job} words={words} readOnly={readOnly} />
      )}
    </section>
  );
}

function Found(props: {
  readonly found: Ways;
  readonly job: string;
  readonly words: TimeWords;
  readonly readOnly: boolean;
}): ReactNode {
  const { found, job, words, readOnly } = props;
  return (
    <>
      {found.ways.length === 0 ? (
        <p className="short-word">No way out was found.</p>
      ) : (
        <ol className="ways">
          {found.ways.map((way) => (
            <li key={JSON.stringify(way.changes)}>
              <WayOut way={way} job={job} currency={found.currency} words={words} readOnly={readOnly} />
            </li>
          ))}
        </ol>
      )}
      {found.ask.length === 0 ? null : (
        <p className="ways-ask">
          <b>Ask the designer:</b>{' '}
          {found.ask
            .map(({ component, name, spare }) => `${component} ${name}, ${spare} to spare`)
            .join('; ')}
          . Nothing is put in place of {found.shortfall.component} without the designer.
        </p>
      )}
      <WhyNone tried={found.tried} isOpen={found.ways.length === 0} />
      <p className="soft ways-rule">
        The plan pays this shortfall&rsquo;s hire by the day already. A way&rsquo;s cost is the whole plan
        with it, less the whole plan without it and without that hire.
      </p>
    </>
  );
}

function WayOut(props: {
  readonly way: Way;
  readonly job: string;
  readonly currency: string;
  readonly words: TimeWords;
  readonly readOnly: boolean;
}): ReactNode {
  const { way, job, words } = props;
  const { apply, busy, error } = useApply(job);
  const [approvedBy, setApprovedBy] = useState('');
  // Rounded: labour and trucks are not known to the cent.
  const cost = roughMoney(way.costCents, props.currency);
  const changes = way.changes.map((change) =>
    change.kind === 'strip' && approvedBy.trim() !== ''
      ? { ...change, approvedBy: approvedBy.trim() }
      : change,
  );
  return (
    <>
      <p className="way-head">
        <span className="way-text">{way.text}</span> <b className="way-cost">{cost}</b>
      </p>
      <ul className={way.movesClash ? 'way-effects moves-clash' : 'way-effects'}>
        {effectWords(way).map((text) => (
          <li key={text}>{text}</li>
        ))}
        {way.newShortfalls.slice(0, mostNamed).map((short) => (
          <li key={short.id} className="short-word">
            new: {shortWords(short, words)}
          </li>
        ))}
        {way.newShortfalls.length > mostNamed ? (
          <li className="short-word">and {way.newShortfalls.length - mostNamed} more</li>
        ) : null}
        {way.order === null ? null : (
          <li className={way.order.isOver ? 'caution-word-ink' : undefined}>{orderWords(way)}</li>
        )}
        {way.uncertain.map((text) => (
          <li key={text} className="soft">
            {text}
          </li>
        ))}
      </ul>
      {way.approval.length === 0 || props.readOnly ? null : (
        <TextField
          label="Approved by (may be left open)"
          value={approvedBy}
          maxLength={80}
          onChange={setApprovedBy}
        />
      )}
      {error === null ? null : <RefusalNote error={error} />}
      {props.readOnly ? null : (
        <Button
          isDisabled={busy}
          aria-label={`Apply: ${way.text}`}
          onPress={() => void apply(changes, way.text.slice(0, mostWords)).catch(() => undefined)}
        >
          Apply
        </Button>
      )}
    </>
  );
}

const mostNamed = 3;
/** What a list of changes keeps of the words. */
const mostWords = 300;
