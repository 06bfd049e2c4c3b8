// Why a gang comes so, or goes there: what is planned, the other ways with what each would cost the whole plan, and the
// nearest ways that cannot be. Asked for only when opened, since every way is a plan of its own.
import type { ReactNode } from 'react';
import { Button } from 'react-aria-components';
import { useUnits } from '../../parts/units.tsx';
import {
  type Alternative,
  barrierWords,
  costWords,
  type Decision,
  shortWords,
  timeOfWay,
  wayWords,
} from './gang-words.ts';

export function WhyPart(props: {
  readonly decision: Decision;
  readonly design: string;
  readonly currency: string;
  readonly readOnly: boolean;
  readonly onFix: (alternative: Alternative) => void;
}): ReactNode {
  const { decision, design } = props;
  const units = useUnits();
  const money = (cents: number): string => units.money(cents, props.currency);
  const { side } = decision;
  return (
    <div className="why">
      <table className="why-ways" aria-label={side === 'arrival' ? 'Other ways to come' : 'Other ways to go'}>
        <thead>
          <tr>
            <th scope="col">{side === 'arrival' ? 'Could come' : 'Could go'}</th>
            <th scope="col">Whole plan</th>
            <td aria-label="Fix" />
          </tr>
        </thead>
        <tbody>
          <tr className="chosen">
            <th scope="row">
              {wayWords(decision.chosen, side)}
              <span className="soft">{timeOfWay(decision.chosen)}</span>
            </th>
            <td colSpan={2}>as planned</td>
          </tr>
          {decision.alternatives.map((each) => (
            <tr key={JSON.stringify(each.choice)}>
              <th scope="row">
                {wayWords(each, side)}
                <span className="soft">{timeOfWay(each)}</span>
                <Effects alternative={each} planned={decision.chosen.toldChanged} />
              </th>
              <td className="amount">{costWords(each.costCents, money)}</td>
              <td>
                <Button
                  isDisabled={props.readOnly}
                  aria-label={`Fix: ${wayWords(each, side)}`}
                  onPress={() => props.onFix(each)}
                >
                  Fix
                </Button>
              </td>
            </tr>
          ))}
          {decision.barred.map((each) => (
            <tr key={JSON.stringify(each.choice)} className="barred">
              <th scope="row">{wayWords(each, side)}</th>
              <td colSpan={2}>{barrierWords(each, design)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {decision.alternatives.length + decision.barred.length === 0 ? (
        <p className="soft">There is no other way.</p>
      ) : null}
      {decision.others > 0 ? (
        <p className="soft">
          {decision.others} {decision.others === 1 ? 'way more was' : 'ways more were'} not planned: by piece
          prices each begins dearer.
        </p>
      ) : null}
      {decision.alternatives.some((each) => each.costCents < 0 && each.unmetMore <= 0) ? (
        <p className="soft">One way is cheaper than the plan: Look for a better plan would find it.</p>
      ) : null}
    </div>
  );
}

function Effects(props: { readonly alternative: Alternative; readonly planned: number }): ReactNode {
  const { shortfalls, unmetMore, toldChanged } = props.alternative;
  const more = toldChanged - props.planned;
  const words = [
    shortWords(shortfalls),
    unmetMore > 0 ? `${unmetMore} piece-days more that cannot be hired` : '',
    more > 0 ? `changes ${more} told ${more === 1 ? 'instruction' : 'instructions'} more` : '',
  ].filter((each) => each !== '');
  if (words.length === 0) return null;
  const worse = shortfalls.some((each) => each.more > 0) || unmetMore > 0;
  return <span className={worse ? 'why-effect short-word' : 'why-effect soft'}>{words.join('; ')}</span>;
}
