// Wind: whose limit it is matters as much as the number. There is no general limit in law (29 CFR 1926.1417
// names none); the crane maker's governs, and a site may set a lower one.
import type { Finding } from '../gang/findings.ts';

/**
 * EM 385-1-1, 16.I.01 (US Army Corps of Engineers): above 20 mph (9 m/s) load handling stops until it is
 * looked at again. It binds on that owner's sites; here it only speaks where nobody entered a limit.
 */
const lookAgainOverMps = 9;

/** Metres a second, null where not entered. `whose` names who set the limit. */
export function windFindings(
  windMps: number | null,
  limitMps: number | null,
  whose: string,
): readonly Finding[] {
  const owner = whose === '' ? 'nobody named' : whose;
  if (limitMps === null) {
    const missing: Finding = {
      rule: 'wind.limit',
      severity: 'note',
      message:
        "No wind limit is entered: the crane maker's is missing, and the site's where it has a lower one.",
      where: 'wind',
    };
    if (windMps === null || windMps <= lookAgainOverMps) return [missing];
    const message = `Wind of ${shownSpeed(windMps)} is expected and no limit is entered; above 20 mph (9 m/s) lifting stops until it is looked at again.`;
    const source = 'EM 385-1-1, 16.I.01; binds where the owner says so';
    return [{ rule: 'wind.limit', severity: 'caution', message, where: 'wind', source }, missing];
  }
  if (windMps === null) {
    const message = `The wind limit is ${shownSpeed(limitMps)} (${owner}); the wind expected is not entered.`;
    return [{ rule: 'wind.limit', severity: 'note', message, where: 'wind' }];
  }
  if (windMps <= limitMps) return [];
  const message = `Wind of ${shownSpeed(windMps)} is expected, over the limit of ${shownSpeed(limitMps)} (${owner}).`;
  return [{ rule: 'wind.limit', severity: 'stop', message, where: 'wind', source: owner }];
}

/** 1 mile is 1609.344 m by definition (international yard and pound agreement, 1959). */
function shownSpeed(mps: number): string {
  const mph = (mps * 3600) / 1609.344;
  return `${Number(mph.toFixed(1))} mph (${Number(mps.toFixed(2))} m/s)`;
}
