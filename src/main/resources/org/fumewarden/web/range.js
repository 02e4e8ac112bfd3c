// One exposure over a range of values; it begins where the advice turns.

import { askJson } from './server.js';
import { el, svg } from './dom.js';
import { name, state } from './state.js';
import { numeral, say } from './words.js';
import { LEVEL_UNITS, plain, split } from './units.js';
import { deviceWords, plate } from './plate.js';
import { movedLines } from './moved.js';
import { faultWords } from './faults.js';
import { openLevels } from './steps.js';

const POINTS = 25;
const SPAN = 30;
const TIMES = ['twa', 'stel', 'ceiling'];
let chosen = '';

/** The exposures that can be varied, each with the value it stands at, or else its limit. */
function choices() {
  const list = Array.isArray(state.task.exposures) ? state.task.exposures : [];
  const given = list.flatMap(e => TIMES.filter(t => e?.[t] !== undefined).map(t => [e.agent, t, e[t]]));
  const open = openLevels().map(q => q.question.split('.').slice(1)).filter(([a, t]) => !given.some(g => g[0] === a && g[1] === t)).map(([a, t]) => [a, t, 'unknown']);
  return [...given, ...open].map(([agent, time, stands]) => {
    const limit = state.vocabulary.limits.find(l => l.agent === agent && l.averaging === time);
    const own = split(stands === 'unknown' ? '' : String(stands).replace('<', ''), LEVEL_UNITS);
    const value = Number(own.number) || (limit ? Number(limit.value) : 1);
    const unit = own.number ? own.unit : limit?.unit ?? own.unit;
    return { path: `exposures.${agent}.${time}`, words: `${name(agent)}, ${say(`averaging.${time}`)}`, value, unit };
  });
}

function place(value, points) {
  const low = Math.log(Number(points[0].value));
  const high = Math.log(Number(points[points.length - 1].value));
  return (Math.log(Number(value)) - low) / (high - low);
}

function ticks(found) {
  return svg('svg', { viewBox: '0 0 1000 16', preserveAspectRatio: 'none', class: 'ticks', 'aria-hidden': 'true' }, found.tipping.map(t => {
    const x = 1000 * place(t.at, found.points);
    return svg('line', { x1: x, x2: x, y1: 0, y2: 16, class: 'tick' });
  }));
}

function chart(text) {
  const drawn = new DOMParser().parseFromString(text, 'image/svg+xml').documentElement;
  return el('div', { className: 'chart', tabIndex: 0, role: 'region', 'aria-label': say('ui.chart') }, document.importNode(drawn, true));
}

/** The point just beyond where the advice turns. */
function beyond(found, turn) {
  const index = found.points.findIndex(p => Number(p.value) > Number(turn.at) || (!turn.inclusive && Number(p.value) === Number(turn.at)));
  return index < 0 ? found.points.length - 1 : index;
}

function nearest(values, value) {
  return values.reduce((best, v, i) => (Math.abs(Math.log(v / value)) < Math.abs(Math.log(values[best] / value)) ? i : best), 0);
}

function result(choice, found) {
  const shown = el('div', { className: 'at', 'aria-live': 'polite' });
  const slide = el('input', { type: 'range', min: 0, max: found.points.length - 1, step: 1, id: 'slide', oninput: move });
  const turn = found.tipping[nearest(found.tipping.map(t => Number(t.at)), choice.value)];
  slide.value = turn ? beyond(found, turn) : nearest(found.points.map(p => Number(p.value)), choice.value);
  function move() {
    const point = found.points[Number(slide.value)];
    const words = `${numeral(plain(Number(Number(point.value).toPrecision(3))))} ${choice.unit}`;
    slide.setAttribute('aria-valuetext', words);
    shown.replaceChildren(plate(point, words, true), el('p', {}, point.serving.length === 0 ? say('ui.serving.none') : `${say('ui.serving')} ${point.serving.map(deviceWords).join('; ')}`));
  }
  function go(t) {
    slide.value = beyond(found, t);
    move();
    slide.focus();
  }
  move();
  return [
    el('label', { className: 'stack', htmlFor: 'slide' }, choice.words),
    el('div', { className: 'track' }, slide, ticks(found)),
    el('p', { className: 'ends' }, el('span', {}, `${numeral(plain(Number(found.points[0].value)))} ${choice.unit}`), el('span', {}, `${numeral(plain(Number(found.points[found.points.length - 1].value)))} ${choice.unit}`)),
    shown,
    el('h4', {}, say('ui.tipping')),
    found.tipping.length === 0 ? el('p', {}, say('ui.tipping.none')) : el('ol', { className: 'tipping' }, found.tipping.map(t => el('li', {},
      el('button', { type: 'button', className: 'quiet', onclick: () => go(t) }, say(t.inclusive ? 'ui.tipping.above' : 'ui.tipping.from', `${numeral(t.at)} ${choice.unit}`)),
      el('ul', { className: 'plain moves' }, movedLines(t.turned, found.language).slice(0, 3))))),
    el('h4', {}, say('ui.chart')), chart(found.chart)];
}

/** The section. */
export function range() {
  const offered = choices();
  const head = el('h3', {}, say('ui.range'));
  if (offered.length === 0) return el('section', { className: 'range' }, head, el('p', {}, say('ui.range.none')));
  const out = el('div', {});
  const choose = el('select', { id: 'vary', onchange: () => { chosen = choose.value; } }, offered.map(c => el('option', { value: c.path, selected: c.path === chosen }, c.words)));
  const button = el('button', { type: 'button', onclick: async () => {
    const choice = offered.find(c => c.path === choose.value);
    button.disabled = true;
    state.busy = true;
    out.replaceChildren(el('p', { role: 'status' }, say('ui.working')));
    try {
      const found = await askJson('api/sweep', { task: state.task, path: choice.path, unit: choice.unit, axis: choice.words,
        from: plain(Number((choice.value / SPAN).toPrecision(3))), to: plain(choice.value * SPAN), points: POINTS, language: document.documentElement.lang });
      out.replaceChildren(...result(choice, found));
    } catch (fault) {
      out.replaceChildren(...(fault.problems ?? []).map(p => el('p', { className: 'fault' }, faultWords(p))));
    } finally {
      state.busy = false;
      button.disabled = false;
    }
  } }, say('ui.range.run'));
  return el('section', { className: 'range' }, head, el('div', { className: 'choices' }, el('label', { htmlFor: 'vary' }, say('ui.range.which')), choose, button), out);
}
