// The picture of the README, from the points that `node bench/growth.mjs --json points.json` has kept:
// node bench/growthFigure.mjs points.json > shared/growth.svg
import { readFileSync } from 'node:fs';

const WIDTH = 640;
const HEIGHT = 300;
const PANEL = { width: 240, height: 180, top: 44 };
const LEFT = [60, 380];

const { persons, cards } = JSON.parse(readFileSync(process.argv[2], 'utf8'));
const panels = [panel('persons', persons, LEFT[0]), panel('cards', cards, LEFT[1])];
console.log(
  [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${WIDTH} ${HEIGHT}" width="${WIDTH}" height="${HEIGHT}" font-family="sans-serif" font-size="12" role="img" aria-label="${said()}">`,
    `<rect width="${WIDTH}" height="${HEIGHT}" fill="#fff"/>`,
    text(WIDTH / 2, 20, 'seconds of a whole build; both scales go in tens', 'middle'),
    ...panels,
    '</svg>',
  ].join('\n'),
);

function said() {
  const texts = [
    ['persons', persons],
    ['cards', cards],
  ].map(
    ([what, points]) =>
      `${points.map(({ size, seconds }) => `${size} ${what} ${seconds.toFixed(1)} s`).join(', ')}`,
  );
  return `Time of a whole build: ${texts.join('; ')}.`;
}

/** Seconds against the number, both on scales of tens: a straight line of slope one is growth in step. */
function panel(what, points, left) {
  const sizes = points.map(({ size }) => size);
  const all = points.flatMap((one) => [one.seconds, one.unchangedSeconds]);
  const x = scale(sizes, left, left + PANEL.width);
  const y = scale(all, PANEL.top + PANEL.height, PANEL.top);
  const bottom = PANEL.top + PANEL.height;
  return [
    `<path d="M${left} ${PANEL.top}V${bottom}H${left + PANEL.width}" fill="none" stroke="#555"/>`,
    ...sizes.map((size) => text(x(size), bottom + 18, size.toLocaleString('en'), 'middle')),
    ...tens(all).flatMap((ten) => [
      `<path d="M${left} ${y(ten).toFixed(1)}h${PANEL.width}" stroke="#ddd"/>`,
      text(left - 8, y(ten) + 4, `${ten.toLocaleString('en')} s`, 'end'),
    ]),
    text(left + PANEL.width / 2, bottom + 38, what, 'middle'),
    text(left + PANEL.width / 2, bottom + 58, memory(points), 'middle'),
    curve(points, ({ seconds: s }) => s, x, y, '#1f5f8b', 'from nothing'),
    curve(points, ({ unchangedSeconds: s }) => s, x, y, '#8a5a00', 'nothing changed', '5 4'),
  ].join('\n');
}

/** The most that the process had, at the smallest and at the largest of them. */
function memory(points) {
  const [first, last] = [points[0], points.at(-1)].map(({ memoryMb }) => memoryMb?.toFixed(0) ?? '?');
  return `memory at most: ${first} MB, ${last} MB`;
}

/** A line through the points with the value at each; its name below, between the first two. */
function curve(points, of, x, y, colour, name, dash = '') {
  const places = points.map((one) => ({ x: x(one.size), y: y(of(one)), value: of(one) }));
  const [first, second = first] = places;
  return [
    `<path d="M${places.map((at) => `${at.x.toFixed(1)} ${at.y.toFixed(1)}`).join('L')}" fill="none" stroke="${colour}" stroke-width="2" stroke-dasharray="${dash}"/>`,
    ...places.flatMap((at) => [
      `<circle cx="${at.x.toFixed(1)}" cy="${at.y.toFixed(1)}" r="3" fill="${colour}"/>`,
      text(at.x, at.y - 8, seconds(at.value), 'middle', colour),
    ]),
    text((first.x + second.x) / 2, (first.y + second.y) / 2 + 18, name, 'start', colour),
  ].join('');
}

function seconds(value) {
  return `${value.toPrecision(value < 100 ? 2 : 3)} s`;
}

function scale(values, from, to) {
  const [least, most] = [Math.log(Math.min(...values) / 2.6), Math.log(Math.max(...values) * 1.5)];
  return (value) => from + ((Math.log(value) - least) / (most - least)) * (to - from);
}

function tens(values) {
  const all = [0.01, 0.1, 1, 10, 100, 1000];
  return all.filter((ten) => ten >= Math.min(...values) / 2.6 && ten <= Math.max(...values) * 1.5);
}

function text(x, y, words, anchor, fill = '#333') {
  return `<text x="${x.toFixed(1)}" y="${y.toFixed(1)}" text-anchor="${anchor}" fill="${fill}">${words}</text>`;
}
