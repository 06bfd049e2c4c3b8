// The columns of the list of designs; fewer are shown while one of them stands beside it.
import type { Column } from '../../parts/data-table.tsx';
import type { Units } from '../../parts/units.tsx';
import type { DesignSummary } from './design-shapes.ts';
import { handWords } from './hand-words.ts';
import { sizeWords } from './size-words.ts';
import { Severities, severityText } from './severities.tsx';

export function designColumns(
  units: Units,
  room: 'list' | 'half' | 'narrow',
  /** Whether any of them has a stop or a caution: else the narrow list gives their room to the names. */
  withFindings: boolean,
): readonly Column<DesignSummary>[] {
  const narrow = room === 'narrow';
  return [
    { id: 'code', header: 'Code', value: (row) => row.code, width: room === 'list' ? 80 : 86 },
    {
      id: 'name',
      header: 'Name',
      value: (row) => row.name,
      width: room === 'list' ? 330 : narrow ? (withFindings ? 130 : 216) : withFindings ? 150 : 258,
    },
    {
      id: 'size',
      header: 'Size',
      numeric: true,
      value: (row) => row.widthNm,
      show: (row) => sizeWords(row.widthNm, row.heightNm, units.system),
      text: (row) => sizeWords(row.widthNm, row.heightNm, units.system),
      width: units.system === 'us' ? 142 : 176,
      hidden: narrow,
    },
    {
      id: 'weight',
      header: 'Weight',
      numeric: true,
      value: (row) => row.weightGrams,
      show: (row) => units.weight(row.weightGrams),
      text: (row) => units.weight(row.weightGrams),
      width: 88,
      hidden: narrow,
    },
    { id: 'pieces', header: 'Pieces', numeric: true, value: (row) => row.pieces, width: 66, hidden: narrow },
    {
      id: 'area',
      header: 'Area',
      numeric: true,
      value: (row) => row.areaM2,
      show: (row) => units.area(row.areaM2),
      text: (row) => units.area(row.areaM2),
      width: 96,
      hidden: room !== 'list',
    },
    { id: 'hand', header: 'Hand', value: (row) => handWords[row.hand], width: 70, hidden: room !== 'list' },
    { id: 'revision', header: 'Revision', value: (row) => row.revision, width: 80, hidden: room !== 'list' },
    { id: 'turns', header: 'Turns', numeric: true, value: (row) => row.turns, width: 62, hidden: narrow },
    {
      id: 'findings',
      header: 'Findings',
      value: (row) => -(row.stops * 1000 + row.cautions),
      show: (row) => <Severities stops={row.stops} cautions={row.cautions} />,
      text: (row) => severityText(row),
      width: room === 'list' ? 150 : 92,
      hidden: room !== 'list' && !withFindings,
    },
  ];
}
