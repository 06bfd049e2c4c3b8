// Feet and inches or metric, switchable anywhere; what is stored never changes. All amounts on every
// screen are printed by these functions, and those are the core's own.
import { createContext, type ReactNode, useContext, useMemo } from 'react';
import { formatArea } from '../../core/units/area.ts';
import { formatLength, type UnitSystem } from '../../core/units/length-format.ts';
import { formatMoney } from '../../core/units/money.ts';
import { formatWeight } from '../../core/units/weight.ts';
import { useRemembered } from './remembered.ts';

export interface Units {
  readonly system: UnitSystem;
  readonly setSystem: (system: UnitSystem) => void;
  readonly length: (lengthNm: number) => string;
  readonly weight: (weightGrams: number) => string;
  readonly area: (areaM2: number) => string;
  readonly money: (minor: number, currency: string) => string;
}

const UnitsContext = createContext<Units | null>(null);

export function useUnits(): Units {
  const units = useContext(UnitsContext);
  if (units === null) throw new Error('A screen stands outside UnitsProvider.');
  return units;
}

export function UnitsProvider(props: {
  /** The job's own units, used until somebody switches. */
  readonly jobUnits: UnitSystem;
  readonly children: ReactNode;
}): ReactNode {
  const [chosen, setChosen] = useRemembered('units', ['job', 'us', 'metric'], 'job');
  const system = chosen === 'job' ? props.jobUnits : chosen;
  const units = useMemo<Units>(
    () => ({
      system,
      setSystem: setChosen,
      length: (lengthNm) => formatLength(lengthNm, system),
      weight: (weightGrams) => formatWeight(weightGrams, system),
      area: (areaM2) => formatArea(BigInt(Math.round(areaM2 * 1e9)) * 1_000_000_000n, system),
      money: formatMoney,
    }),
    [system, setChosen],
  );
  return <UnitsContext value={units}>{props.children}</UnitsContext>;
}
