// The line of controls over the days: the typed move, which rows, how much time, where in time.
import type { ReactNode } from 'react';
import { Button, Group, ToggleButton } from 'react-aria-components';
import { Choice } from '../../parts/choice.tsx';
import { shortDate } from '../../parts/time-words.ts';
import { Legend } from './legend.tsx';
import { addDays } from '../../parts/zoned.ts';

export interface BoardView {
  readonly from: string;
  readonly whole: boolean;
  readonly runs: boolean;
  readonly wall: boolean;
}

export function BoardTools(props: {
  readonly view: BoardView;
  /** The Monday that is shown where the address names none. */
  readonly home: string;
  /** Whether that is this week, or only where the plan begins. */
  readonly today: boolean;
  readonly children: ReactNode;
  readonly onChange: (changes: Readonly<Record<string, string | null>>) => void;
}): ReactNode {
  const { view, home, onChange } = props;
  return (
    <div className="board-tools">
      {props.children}
      <div className="tools-end">
        <Group className="pager" aria-label="Weeks shown">
          <Button
            isDisabled={view.whole}
            aria-label="A week earlier"
            onPress={() => onChange({ from: addDays(view.from, -7) })}
          >
            ←
          </Button>
          <Button isDisabled={view.whole || view.from === home} onPress={() => onChange({ from: null })}>
            {props.today ? 'This week' : `Start, ${shortDate(home)}`}
          </Button>
          <Button
            isDisabled={view.whole}
            aria-label="A week later"
            onPress={() => onChange({ from: addDays(view.from, 7) })}
          >
            →
          </Button>
        </Group>
        <Choice
          label="Time shown"
          value={view.whole ? 'all' : 'two'}
          options={[
            ['two', 'two weeks'],
            ['all', 'all weeks'],
          ]}
          onChange={(value) => onChange({ weeks: value === 'all' ? 'all' : null })}
        />
        <Choice
          label="Rows"
          value={view.runs ? 'run' : 'pour'}
          options={[
            ['pour', 'by pour'],
            ['run', 'by gang'],
          ]}
          onChange={(value) => onChange({ rows: value === 'run' ? 'run' : null })}
        />
        <Legend />
        <ToggleButton
          className="wall-button"
          isSelected={view.wall}
          onChange={(on) => onChange({ wall: on ? '1' : null })}
        >
          Wall view
        </ToggleButton>
      </div>
    </div>
  );
}
