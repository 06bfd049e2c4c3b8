// Published values on slings, chains, lifting attachments and wind, each with where it is from. `computed` ones are
// plain arithmetic on a published rule. Angles are from the horizontal, but for the metric chain table.
// Weights in pounds as printed, metric chains in tonnes.

export interface Published {
  readonly id: string;
  readonly source: string;
  readonly basis: 'published' | 'computed' | 'table' | 'rule';
}

// prettier-ignore
export const slingTensions: readonly ({ readonly loadLb: number; readonly legs: number; readonly angleDeg: number; readonly legLb: number; readonly within: number } & Published)[] = [
  { id: 'SLING-01', loadLb: 1000, legs: 2, angleDeg: 90, legLb: 500, within: 0.5, basis: 'published',
    source: 'US Navy training manual, bridle hitch, https://enginemechanics.tpub.com/14080/css/Bridle-Hitch-99.htm' },
  { id: 'SLING-02', loadLb: 1000, legs: 2, angleDeg: 30, legLb: 1000, within: 0.5, basis: 'published',
    source: 'US Navy training manual, bridle hitch, https://enginemechanics.tpub.com/14080/css/Bridle-Hitch-99.htm' },
  { id: 'SLING-03', loadLb: 1000, legs: 2, angleDeg: 45, legLb: 707, within: 0.5, basis: 'published',
    source: 'Rigging note, leg load at 45 degrees, http://www.kwrs.com/products/212-determining-lifting-load-capacity-of-a-sling.aspx' },
  { id: 'SLING-04', loadLb: 10000, legs: 2, angleDeg: 60, legLb: 5773, within: 0.6, basis: 'published',
    source: 'Rigging note, leg load at 60 degrees, https://cal87.calculator.city/sling-angle-calculation.html' },
  { id: 'SLING-19', loadLb: 8000, legs: 2, angleDeg: 60, legLb: 4618.8, within: 0.1, basis: 'computed',
    source: 'Four-leg bridle on a rigid gang, two legs counted, https://enginemechanics.tpub.com/14080/css/Bridle-Hitch-99.htm' },
  { id: 'SLING-20', loadLb: 8000, legs: 3, angleDeg: 60, legLb: 3079.2, within: 0.1, basis: 'computed',
    source: 'Same lift, three legs counted (chain-sling table basis), https://print.casetext.com/regulation/ohio-administrative-code/title-41231-division-of-safety-and-hygiene/chapter-41231-3-construction/section-41231-3-08-ropes-chains-and-slings' },
];

// prettier-ignore
export const slingFactors: readonly ({ readonly angleDeg: number; readonly factor: number } & Published)[] = [
  { id: 'SLING-05', angleDeg: 90, factor: 1.0, basis: 'computed',
    source: 'Load angle factor 1/sin(angle from horizontal), https://clutchcalcs.com/calculators/lift-angle-force-multiplier/' },
  { id: 'SLING-06', angleDeg: 75, factor: 1.0353, basis: 'computed',
    source: 'Load angle factor 1/sin(angle from horizontal), https://clutchcalcs.com/calculators/lift-angle-force-multiplier/' },
  { id: 'SLING-07', angleDeg: 60, factor: 1.1547, basis: 'computed',
    source: 'Load angle factor 1/sin(angle from horizontal), https://clutchcalcs.com/calculators/lift-angle-force-multiplier/' },
  { id: 'SLING-08', angleDeg: 45, factor: 1.4142, basis: 'computed',
    source: 'Load angle factor 1/sin(angle from horizontal), https://clutchcalcs.com/calculators/lift-angle-force-multiplier/' },
  { id: 'SLING-09', angleDeg: 30, factor: 2.0, basis: 'computed',
    source: 'Load angle factor 1/sin(angle from horizontal), https://clutchcalcs.com/calculators/lift-angle-force-multiplier/' },
];

// prettier-ignore
export const slingCapacities: readonly ({ readonly ratedLb: number; readonly angleDeg: number; readonly carriesLb: number } & Published)[] = [
  { id: 'SLING-10', ratedLb: 1000, angleDeg: 90, carriesLb: 1000, basis: 'published',
    source: 'Published sling capacity chart, 1000 lb sling, https://usnetting.com/commercial-netting/cargo-netting/cargo-lifting-slings/safety-tips' },
  { id: 'SLING-11', ratedLb: 1000, angleDeg: 75, carriesLb: 966, basis: 'published',
    source: 'Published sling capacity chart, 1000 lb sling, https://usnetting.com/commercial-netting/cargo-netting/cargo-lifting-slings/safety-tips' },
  { id: 'SLING-12', ratedLb: 1000, angleDeg: 60, carriesLb: 866, basis: 'published',
    source: 'Published sling capacity chart, 1000 lb sling, https://usnetting.com/commercial-netting/cargo-netting/cargo-lifting-slings/safety-tips' },
  { id: 'SLING-13', ratedLb: 1000, angleDeg: 45, carriesLb: 707, basis: 'published',
    source: 'Published sling capacity chart, 1000 lb sling, https://usnetting.com/commercial-netting/cargo-netting/cargo-lifting-slings/safety-tips' },
  { id: 'SLING-14', ratedLb: 1000, angleDeg: 30, carriesLb: 500, basis: 'published',
    source: 'Published sling capacity chart, 1000 lb sling, https://usnetting.com/commercial-netting/cargo-netting/cargo-lifting-slings/safety-tips' },
  { id: 'SLING-15', ratedLb: 1000, angleDeg: 15, carriesLb: 258, basis: 'published',
    source: 'Published sling capacity chart, 1000 lb sling, https://usnetting.com/commercial-netting/cargo-netting/cargo-lifting-slings/safety-tips' },
  { id: 'SLING-16', ratedLb: 1000, angleDeg: 5, carriesLb: 87, basis: 'published',
    source: 'Published sling capacity chart, 1000 lb sling, https://usnetting.com/commercial-netting/cargo-netting/cargo-lifting-slings/safety-tips' },
];

// prettier-ignore
export const bridles: readonly ({ readonly legRatedLb: number; readonly headroomFt: number; readonly legFt: number; readonly legs: number; readonly carriesLb: number } & Published)[] = [
  { id: 'SLING-17', legRatedLb: 5000, headroomFt: 8, legFt: 10, legs: 4, carriesLb: 8000, basis: 'computed',
    source: 'US Navy manual: SWL = single-leg SWL x H/L x 2, also for 3- and 4-leg hitches, http://enginemechanics.tpub.com/14080/css/Figure-3-23-Determination-Of-Bridle-Hitch-Sling-Capacity-100.htm' },
  { id: 'SLING-18', legRatedLb: 3200, headroomFt: 6, legFt: 12, legs: 2, carriesLb: 3200, basis: 'computed',
    source: 'US Navy manual: SWL = single-leg SWL x H/L x 2, http://enginemechanics.tpub.com/14080/css/Figure-3-23-Determination-Of-Bridle-Hitch-Sling-Capacity-100.htm' },
];

// prettier-ignore
export const chainsUs: readonly ({ readonly chain: string; readonly singleLb: number; readonly double: readonly [number, number, number]; readonly triple: readonly [number, number, number] } & Published)[] = [
  { id: 'CHAIN-US-01', chain: '1/4 in', singleLb: 3250, double: [5560, 4550, 3250], triple: [8400, 6800, 4900], basis: 'published',
    source: 'Ohio Adm. Code 4123:1-3-08, rated capacity of alloy steel chain slings, https://print.casetext.com/regulation/ohio-administrative-code/title-41231-division-of-safety-and-hygiene/chapter-41231-3-construction/section-41231-3-08-ropes-chains-and-slings' },
  { id: 'CHAIN-US-02', chain: '3/8 in', singleLb: 6600, double: [11400, 9300, 6600], triple: [17000, 14000, 9900], basis: 'published',
    source: 'Ohio Adm. Code 4123:1-3-08, rated capacity of alloy steel chain slings, https://print.casetext.com/regulation/ohio-administrative-code/title-41231-division-of-safety-and-hygiene/chapter-41231-3-construction/section-41231-3-08-ropes-chains-and-slings' },
  { id: 'CHAIN-US-03', chain: '1/2 in', singleLb: 11250, double: [19500, 15900, 11250], triple: [29000, 24000, 17000], basis: 'published',
    source: 'Ohio Adm. Code 4123:1-3-08, rated capacity of alloy steel chain slings, https://print.casetext.com/regulation/ohio-administrative-code/title-41231-division-of-safety-and-hygiene/chapter-41231-3-construction/section-41231-3-08-ropes-chains-and-slings' },
];

// prettier-ignore
export const chainsEn: readonly ({ readonly chain: string; readonly singleT: number; readonly two: readonly [number, number]; readonly more: readonly [number, number] } & Published)[] = [
  { id: 'CHAIN-EN-01', chain: '8 mm', singleT: 2.0, two: [2.8, 2.0], more: [4.25, 3.0], basis: 'published',
    source: 'EN 818-4 grade 8 working load limits as reprinted in a load table, http://server.overtures.in:8080/jebrahim.com/catalog/files/basic-html/page148.html' },
  { id: 'CHAIN-EN-02', chain: '10 mm', singleT: 3.15, two: [4.25, 3.15], more: [6.7, 4.75], basis: 'published',
    source: 'EN 818-4 grade 8 working load limits as reprinted in a load table, http://server.overtures.in:8080/jebrahim.com/catalog/files/basic-html/page148.html' },
  { id: 'CHAIN-EN-03', chain: '13 mm', singleT: 5.3, two: [7.5, 5.3], more: [11.2, 8.0], basis: 'published',
    source: 'EN 818-4 grade 8 working load limits as reprinted in a load table, http://server.overtures.in:8080/jebrahim.com/catalog/files/basic-html/page148.html' },
  { id: 'CHAIN-EN-04', chain: '16 mm', singleT: 8.0, two: [11.2, 8.0], more: [17.0, 11.8], basis: 'published',
    source: 'EN 818-4 grade 8 working load limits as reprinted in a load table, http://server.overtures.in:8080/jebrahim.com/catalog/files/basic-html/page148.html' },
];

// prettier-ignore
export const attachmentRules: readonly ({ readonly gangLb: number; readonly applies: boolean; readonly factor: number | null } & Published)[] = [
  { id: 'CAL1713-01', gangLb: 500, applies: false, factor: null, basis: 'rule',
    source: 'Cal. Code Regs. Tit. 8 s.1713(b)(1): panels and forms exceeding 500 lb, https://d1tvxue8o4w0fl.cloudfront.net/regulation/california-code-of-regulations/title-8-industrial-relations/division-1-department-of-industrial-relations/chapter-4-division-of-industrial-safety/subchapter-4-construction-safety-orders/article-29-erection-and-construction/section-1713-framed-panels-and-concrete-forms' },
  { id: 'CAL1713-02', gangLb: 501, applies: true, factor: 4, basis: 'rule',
    source: 'Cal. Code Regs. Tit. 8 s.1713(b)(1): panels and forms exceeding 500 lb, https://d1tvxue8o4w0fl.cloudfront.net/regulation/california-code-of-regulations/title-8-industrial-relations/division-1-department-of-industrial-relations/chapter-4-division-of-industrial-safety/subchapter-4-construction-safety-orders/article-29-erection-and-construction/section-1713-framed-panels-and-concrete-forms' },
  { id: 'CAL1713-03', gangLb: 6000, applies: true, factor: 4, basis: 'rule',
    source: 'Cal. Code Regs. Tit. 8 s.1713(b)(1): panels and forms exceeding 500 lb, https://d1tvxue8o4w0fl.cloudfront.net/regulation/california-code-of-regulations/title-8-industrial-relations/division-1-department-of-industrial-relations/chapter-4-division-of-industrial-safety/subchapter-4-construction-safety-orders/article-29-erection-and-construction/section-1713-framed-panels-and-concrete-forms' },
];

// prettier-ignore
export const attachmentStrengths: readonly ({ readonly gangLb: number; readonly points: number; readonly angleFactor: number; readonly ultimateLb: number } & Published)[] = [
  { id: 'ATTACH-01', gangLb: 6000, points: 2, angleFactor: 1.0, ultimateLb: 12000, basis: 'computed',
    source: 'Ultimate strength per lifting point from safety factor 4, https://d1tvxue8o4w0fl.cloudfront.net/regulation/california-code-of-regulations/title-8-industrial-relations/division-1-department-of-industrial-relations/chapter-4-division-of-industrial-safety/subchapter-4-construction-safety-orders/article-29-erection-and-construction/section-1713-framed-panels-and-concrete-forms' },
  { id: 'ATTACH-02', gangLb: 6000, points: 2, angleFactor: 1.1547, ultimateLb: 13856.4, basis: 'computed',
    source: 'Ultimate strength per lifting point from safety factor 4, https://d1tvxue8o4w0fl.cloudfront.net/regulation/california-code-of-regulations/title-8-industrial-relations/division-1-department-of-industrial-relations/chapter-4-division-of-industrial-safety/subchapter-4-construction-safety-orders/article-29-erection-and-construction/section-1713-framed-panels-and-concrete-forms' },
];

// prettier-ignore
export const proofLoads: readonly ({ readonly ratedLb: number; readonly proofLb: number } & Published)[] = [
  { id: 'PROOF-01', ratedLb: 4000, proofLb: 5000, basis: 'computed',
    source: '29 CFR 1926.251(a)(4), custom lifting accessories, http://www.complianceregs.com/29cfr/1926/subH/1926-251.html' },
];

// prettier-ignore
export const impacts: readonly ({ readonly weightLb: number; readonly fraction: number; readonly ratingLb: number } & Published)[] = [
  { id: 'TILT-01', weightLb: 5000, fraction: 0.5, ratingLb: 7500, basis: 'published',
    source: 'Trade-journal note: 50 percent impact on insert rating, http://www.concreteconstruction.net/how-to/strength-of-inserts-for-tilt-up_o' },
];

// prettier-ignore
export const windRules: readonly ({ readonly overMps: number; readonly overMph: number } & Published)[] = [
  { id: 'WINDOP-02', overMps: 9, overMph: 20, basis: 'table',
    source: 'EM 385-1-1 16.I.01, all load handling, https://oshacademy.com/courses/training/502-em385-1-1-safety-health/502-16-14.php' },
];

/** Published beside the others, and why nothing here reproduces them. */
// prettier-ignore
export const notOurs: readonly { readonly id: string; readonly source: string; readonly why: string }[] = [
  { id: 'OSHA704-01', why: 'written for inserts in tilt-up concrete members, not for forms',
    source: '29 CFR 1926.704(b)-(d), http://federal.elaws.us/cfr/title29.part1926.section1926.704' },
  { id: 'OSHA704-02', why: 'written for inserts in precast concrete members, not for forms',
    source: '29 CFR 1926.704(b)-(d), http://federal.elaws.us/cfr/title29.part1926.section1926.704' },
  { id: 'OSHA704-03', why: 'written for hardware of precast concrete members, not for forms',
    source: '29 CFR 1926.704(b)-(d), http://federal.elaws.us/cfr/title29.part1926.section1926.704' },
  { id: 'OSHA1425', why: 'says where people may be under a load: a caution on screens and sheets, no number',
    source: '29 CFR 1926.1425 keeping clear of the load, https://codes.findlaw.com/cfr/title-29-labor/cfr-sect-29-1926-1425/' },
  { id: 'WINDOP-01', why: 'is for platforms that carry people; a gang carries nobody',
    source: '29 CFR 1926.1431(k)(8), personnel platforms, https://legalclarity.org/crane-wind-speed-limits-by-crane-type-and-osha-standards/' },
  { id: 'WINDOP-03', why: 'is for carriers of people; a gang carries nobody',
    source: 'BS 7121-1:2006, personnel carriers (as quoted), https://northcountrytractor.com/cranes/what-is-the-maximum-wind-speed-osha-allows-for-lifting-by-crane.html' },
  { id: 'WINDOP-04', why: 'defines high wind for another rule, not for cranes',
    source: 'OSHA "high wind" note: 40 mph, or 30 mph where material is handled (as quoted), https://ieeeglobalspec.com/cranes/what-wind-speed-stops-cranes.html' },
  { id: 'CRANE-01', why: 'is about when a crane tips: its maker\'s chart answers that, and only the chart is asked',
    source: 'Lecture sanity check on crane reach, https://github.com/damontallen/Construction-Lectures-Fall-2014' },
];

/** Every row of the section on rigging that the values above were copied from, in its order. */
export const sectionRows: readonly string[] = [
  'SLING-01',
  'SLING-02',
  'SLING-03',
  'SLING-04',
  'SLING-05',
  'SLING-06',
  'SLING-07',
  'SLING-08',
  'SLING-09',
  'SLING-10',
  'SLING-11',
  'SLING-12',
  'SLING-13',
  'SLING-14',
  'SLING-15',
  'SLING-16',
  'SLING-17',
  'SLING-18',
  'SLING-19',
  'SLING-20',
  'CHAIN-US-01',
  'CHAIN-US-02',
  'CHAIN-US-03',
  'CHAIN-EN-01',
  'CHAIN-EN-02',
  'CHAIN-EN-03',
  'CHAIN-EN-04',
  'CAL1713-01',
  'CAL1713-02',
  'CAL1713-03',
  'ATTACH-01',
  'ATTACH-02',
  'PROOF-01',
  'OSHA704-01',
  'OSHA704-02',
  'OSHA704-03',
  'TILT-01',
  'OSHA1425',
  'WINDOP-01',
  'WINDOP-02',
  'WINDOP-03',
  'WINDOP-04',
  'CRANE-01',
];
