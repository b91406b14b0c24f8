/** The bench's tables. */
import { RULES } from '../../../src/rules/list.ts';
import { FAMILIES } from '../../../src/rules/rule.ts';
import { placeAt, printPlace } from '../../../src/score/place.ts';
import type { Result } from './plant.ts';
import type { Quiet } from './quiet.ts';

export function printPlanted(results: readonly Result[], without: readonly string[]): void {
  console.log('Planted faults: found and named by the rule they were planted for');
  console.log(row('rule', 'plants', 'named', '%', 'otherwise', 'F/Q/R'));
  for (const family of FAMILIES) {
    const here = results.filter((result) => result.planter.family === family);
    if (here.length === 0) continue;
    console.log(`\n  ${family}`);
    for (const result of here) printResult(result);
    const plants = sum(here.map((result) => result.plants));
    const named = sum(here.map((result) => result.named));
    console.log(
      row(`all of ${family}`, plants, named, percent(named, plants), sum(here.map((r) => r.otherwise)), ''),
    );
  }
  const plants = sum(results.map((result) => result.plants));
  const named = sum(results.map((result) => result.named));
  const full = results.filter((result) => result.plants >= 50).length;
  console.log(
    `\n  ${plants} plants for ${results.length} rules (${full} with 50 or more); named ${percent(named, plants)} %`,
  );
  if (without.length > 0) console.log(`  no planter: ${without.join(', ')}`);
}

function printResult({ planter, plants, named, otherwise, severities, missed }: Result): void {
  const { fault, query, remark } = severities;
  console.log(`    ${planter.definition}:`);
  console.log(
    row(planter.rule, plants, named, percent(named, plants), otherwise, `${fault}/${query}/${remark}`),
  );
  for (const { piece, place } of missed.slice(0, 3)) {
    const at = printPlace(placeAt(piece.score, place.at));
    console.log(`      missed: chorale ${piece.number}, ${at}, ${place.voices.join('')}`);
  }
}

/** How many marks one slip brings: what stands by itself, beside all that is said. */
export function printSlips(results: readonly Result[]): void {
  console.log(
    '\nOne slip, one mark: new faults and queries for each planted slip (target: 1.30 by themselves)',
  );
  console.log(row('rule', 'plants', 'all', 'themselves', 'leads %', ''));
  const total = (list: readonly Result[], name: string, last = '') => {
    const plants = sum(list.map((result) => result.plants));
    const each = (n: number) => (plants === 0 ? '–' : (n / plants).toFixed(2));
    const all = each(sum(list.map((result) => result.brought)));
    const own = each(sum(list.map((result) => result.marks)));
    const leads = percent(sum(list.map((result) => result.leads)), plants);
    console.log(`${row(name, plants, all, own, leads)}  ${last}`);
  };
  for (const family of FAMILIES) {
    const here = results.filter((result) => result.planter.family === family);
    for (const result of here) total([result], result.planter.rule, commonest(result.beside));
    if (here.length > 0) total(here, `all of ${family}`);
  }
  total(results, 'all');
}

function commonest(beside: ReadonlyMap<string, number>): string {
  const most = [...beside].toSorted(([, a], [, b]) => b - a).slice(0, 3);
  return most.map(([rule, times]) => `${rule} ${times}`).join(', ');
}

export function printQuiet({ beats, counts, byRule, findings }: Quiet, pieces: number): void {
  const per100 = (n: number) => ((100 * n) / beats).toFixed(2);
  console.log(`\nQuiet on masters: ${pieces} chorales, ${beats.toFixed(0)} beats`);
  console.log(`  faults ${counts.fault} (${per100(counts.fault)} per 100 beats; target 1.00)`);
  console.log(`  queries ${counts.query} (${per100(counts.query)} per 100 beats; target 3.00)`);
  console.log(`  remarks ${counts.remark} (${per100(counts.remark)} per 100 beats)`);
  const weight = (id: string) => (byRule.get(id)?.fault ?? 0) * 3 + (byRule.get(id)?.query ?? 0);
  const rules = RULES.map((rule) => rule.id).filter((id) => byRule.has(id));
  console.log(
    `\n  ${'by rule, commonest first'.padEnd(32)}${'faults'.padStart(8)}${'queries'.padStart(9)}${'remarks'.padStart(9)}`,
  );
  for (const id of rules.toSorted((a, b) => weight(b) - weight(a))) {
    const { fault, query, remark } = byRule.get(id)!;
    console.log(
      `  ${id.padEnd(32)}${String(fault).padStart(8)}${String(query).padStart(9)}${String(remark).padStart(9)}`,
    );
  }
  console.log('\n  Consecutives reported as faults; published: 18 parallel-fifth passages in 371 chorales');
  console.log('  (Fitsioris and Conklin, CIM 2008), 46 consecutives of every kind in about 410 (Dahn 2016)');
  for (const { piece, finding } of findings) {
    if (finding.severity !== 'fault' || finding.rule.family !== 'consecutives') continue;
    const place = printPlace(placeAt(piece.score, finding.from));
    console.log(`    ${piece.number} ${place}: ${finding.message}`);
  }
}

function row(name: string, ...cells: readonly (string | number)[]): string {
  return `  ${name.padEnd(32)}${cells.map((cell) => String(cell).padStart(10)).join('')}`;
}

function percent(part: number, whole: number): string {
  return whole === 0 ? '–' : ((100 * part) / whole).toFixed(1);
}

function sum(numbers: readonly number[]): number {
  return numbers.reduce((total, n) => total + n, 0);
}
