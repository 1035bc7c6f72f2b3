// Every part in a process of its own, one after another, and one table of what they measured; exit 1 when a limit is missed.
// node bench/bench.mjs [--markdown] [part ...]
import { fork } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { cellsOf, isMissed } from './row.mjs';

const PARTS = [
  'mechanics',
  'programme',
  'dose',
  'week',
  'review',
  'check',
  'site',
  'page',
  'paper',
  'paint',
  'sealed',
  'motion',
  'desk',
  'commands',
  'growth',
];
const HEAD = ['what', 'measured', 'limit', 'ratio'];

const asked = process.argv.slice(2).filter((word) => word !== '--markdown');
const unknown = asked.find((word) => !PARTS.includes(word));
if (unknown === undefined) await measure(asked.length === 0 ? PARTS : asked);
else {
  console.error(`There is no part ${unknown}: ${PARTS.join(', ')}.`);
  process.exitCode = 64;
}

async function measure(parts) {
  const rows = [];
  for (const part of parts) {
    process.stderr.write(`${part} ...\n`);
    rows.push(...(await rowsOf(part)));
  }
  console.log(process.argv.includes('--markdown') ? markdown(rows) : plain(rows));
  const missed = rows.filter(isMissed);
  for (const { what } of missed) console.error(`Missed its limit: ${what}`);
  if (missed.length > 0) process.exitCode = 1;
}

/** The rows a part hands on; one that breaks off has failed, whatever it measured before. */
function rowsOf(part) {
  const rows = [];
  const child = fork(fileURLToPath(new URL(`${part}.mjs`, import.meta.url)));
  child.on('message', (row) => rows.push(row));
  return new Promise((done) => {
    child.on('exit', (code) => {
      if (code !== 0) {
        console.error(`${part} broke off`);
        process.exitCode = 1;
      }
      done(rows);
    });
  });
}

function plain(rows) {
  const table = [HEAD, ...rows.map(cellsOf)];
  const widths = HEAD.map((_, column) => Math.max(...table.map((cells) => cells[column].length)));
  return table
    .map((cells) =>
      cells
        .map((cell, column) => cell.padEnd(widths[column]))
        .join('  ')
        .trimEnd(),
    )
    .join('\n');
}

function markdown(rows) {
  const line = (cells) => `| ${cells.join(' | ')} |`;
  return [line(HEAD), line(HEAD.map(() => '---')), ...rows.map((row) => line(cellsOf(row)))].join('\n');
}
