// Panels and gang designs of a large job: rows of many widths, upright, with a lower row above.
export const designCodes: readonly string[] = Array.from({ length: 25 }, (_, index) => `G${index + 1}`);

/** Inches. With those of the demo's catalogue they make fourteen widths in two heights. */
const moreWidths = [34, 32, 28, 26, 22, 20, 16, 14];
const widths = [36, 30, 24, 18, 12, ...moreWidths];
const heights = [
  { letter: 'P8', inches: 96, members: '6; 48; 90', holes: (half: number) => `${half} x 24; ${half} x 72` },
  { letter: 'P4', inches: 48, members: '6; 42', holes: (half: number) => `${half} x 24` },
] as const;

/** CSV of the panels that the demo's catalogue does not have. */
export function panelsText(): string {
  const head =
    'code,name,kind,system,weight (lb),width (in),height (in),cross members (in),tie holes (in),hire per day,regang hours a piece';
  const lines = heights.flatMap(({ letter, inches, members, holes }) =>
    moreWidths.map((width) => {
      const weight = Math.round(width * inches * 0.058);
      const code = `${letter}${width}`;
      return `${code},Panel ${width} in x ${inches / 12} ft,panel,OMB,${weight},${width},${inches},${members},${holes(width / 2)},${(width / 25).toFixed(2)},0.05`;
    }),
  );
  return [head, ...lines].join('\n');
}

/** CSV of the designs: three to five panels in a row, 12 ft high. */
export function designsText(next: () => number): string {
  const head =
    'design,name,system,revision,hand,left edge,right edge,assemble hours,break down hours,item,x (in),y (in)';
  const lines = designCodes.flatMap((code, index) => {
    // Designs near each other in the list share most of their widths, as gangs of one wall do.
    const row = Array.from({ length: 3 + Math.floor(next() * 3) }, () =>
      widthAt(index + Math.floor(next() * 5)),
    );
    return heights.flatMap(({ letter }, level) =>
      row.map((width, place) => {
        const first = level === 0 && place === 0;
        const facts = first
          ? `Wall gang ${index + 1},OMB,A,symmetrical,next-gang,next-gang,1.5,0.75`
          : ',,,,,,,';
        const x = row.slice(0, place).reduce((sum, before) => sum + before, 0);
        return `${code},${facts},${letter}${width},${x},${level === 0 ? 0 : 96}`;
      }),
    );
  });
  return [head, ...lines].join('\n');
}

function widthAt(place: number): number {
  return widths[place % widths.length] ?? 36;
}
