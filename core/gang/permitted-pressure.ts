// The pressure of fresh concrete that a gang may take: the least of its panels, each as it stands. A panel on its
// side has a figure of its own, which follows from nothing.
import type { Finding } from './findings.ts';
import type { Gang, StandingPanel } from './placed.ts';

/** Whole pascals, and the panel that governs. */
export interface PermittedPressure {
  readonly pa: number;
  readonly panel: string;
  readonly onSide: boolean;
}

/** Null where the catalogue does not tell it for every panel as it stands; a note then says which. */
export function permittedPressure({ panels }: Gang): {
  readonly permitted: PermittedPressure | null;
  readonly findings: readonly Finding[];
} {
  if (panels.every((one) => figureOf(one) === undefined && one.panel.pressurePa === undefined))
    return { permitted: null, findings: [] };
  let least: PermittedPressure | undefined;
  const findings = new Map<string, Finding>();
  for (const standing of panels) {
    const { panel, onSide, leftNm, bottomNm } = standing;
    const pa = figureOf(standing);
    const key = `${panel.code} ${onSide}`;
    if (pa === undefined && !findings.has(key)) {
      const how = onSide ? 'on its side' : 'upright';
      findings.set(key, {
        rule: 'pressure',
        severity: 'note',
        message: `The catalogue tells no permitted pressure of panel ${panel.code} ${how}: ask the designer. Until then the gang has none.`,
        where: { xNm: leftNm, yNm: bottomNm },
      });
    }
    if (pa !== undefined && (least === undefined || pa < least.pa)) least = { pa, panel: panel.code, onSide };
  }
  return {
    permitted: findings.size === 0 ? (least ?? null) : null,
    findings: [...findings.values()],
  };
}

function figureOf({ panel, onSide }: StandingPanel): number | undefined {
  return onSide ? panel.pressureOnSidePa : panel.pressurePa;
}
